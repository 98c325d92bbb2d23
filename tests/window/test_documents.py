"""New, open, save, recent, closing with unsaved work, dropped files, recovery."""

import json
from pathlib import Path

import pytest
from attrs import evolve
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QCloseEvent, QDropEvent
from PySide6.QtWidgets import QApplication
from support.builders import plant, yard_of
from support.window_hands import trigger

from yardplan.files import recovery
from yardplan.files.errors import YardFileError
from yardplan.files.reading import read_yard
from yardplan.files.writing import save
from yardplan.window.recent_menu import open_sample, samples
from yardplan.yard import edits

YARD = yard_of(plant("A1", "apple:Liberty", (5, 5)))


@pytest.fixture
def window(make_window):
    return make_window(YARD)


def change(window):
    window.open_yard.commit("Move A1", edits.move(window.open_yard.yard, {"A1"}, (1, 0)))


def answer(window, name, value):
    """Answer a question for the person and note what was asked."""
    asked = []

    def give(*args):
        asked.append(args)
        return value

    setattr(window.questions, name, give)
    return asked


def test_saving_asks_for_a_name_once(window, tmp_path):
    path = tmp_path / "one.yard"
    asked = answer(window, "save_path", path)
    change(window)
    trigger(window, "save")
    trigger(window, "save")
    assert len(asked) == 1
    assert read_yard(path) == window.open_yard.yard
    assert window.documents.recent() == [path]


def test_the_suggested_name_is_made_of_the_yards_name(window):
    asked = answer(window, "save_path", None)
    change(window)
    trigger(window, "save as")
    assert asked[0][0].name == "test_yard.yard"
    assert window.open_yard.unsaved


def test_the_title_marks_unsaved_work(window, tmp_path):
    answer(window, "save_path", tmp_path / "one.yard")
    assert not window.isWindowModified()
    change(window)
    assert window.isWindowModified()
    trigger(window, "save")
    assert not window.isWindowModified()
    assert "one.yard" in window.windowTitle()
    trigger(window, "undo")
    assert window.isWindowModified()
    trigger(window, "redo")
    assert not window.isWindowModified()


@pytest.mark.parametrize(("choice", "closes"), [("discard", True), ("cancel", False), ("save", True)])
def test_closing_with_unsaved_work(window, tmp_path, choice, closes):
    path = tmp_path / "one.yard"
    answer(window, "save_path", path)
    asked = answer(window, "save_changes", choice)
    change(window)
    event = QCloseEvent()
    window.closeEvent(event)
    assert event.isAccepted() is closes
    assert len(asked) == 1
    assert path.exists() is (choice == "save")


def test_closing_when_the_save_box_is_cancelled_keeps_the_window(window):
    answer(window, "save_path", None)
    answer(window, "save_changes", "save")
    change(window)
    event = QCloseEvent()
    window.closeEvent(event)
    assert not event.isAccepted()


def test_nothing_is_asked_when_all_is_saved(window):
    asked = answer(window, "save_changes", "cancel")
    event = QCloseEvent()
    window.closeEvent(event)
    assert event.isAccepted()
    assert not asked


def test_a_damaged_file_is_told_and_nothing_changes(window, tmp_path):
    path = tmp_path / "bad.yard"
    path.write_text(json.dumps({"format": "yard", "version": 1, "lot": "round"}))
    told = answer(window, "tell_fault", None)
    assert not window.documents.load(path)
    assert told[0][0] == "bad.yard was not opened"
    assert window.open_yard.yard is YARD
    (tmp_path / "bad.yard~").write_text("the copy before")
    assert not window.documents.load(path)
    assert "lies beside it as bad.yard~" in told[1][0]


def test_a_folder_that_cannot_be_written_keeps_the_work_unsaved(window, tmp_path):
    told = answer(window, "tell_fault", None)
    answer(window, "save_path", tmp_path / "no such folder" / "one.yard")
    change(window)
    trigger(window, "save")
    assert told
    assert window.open_yard.unsaved
    assert window.open_yard.path is None


def test_undo_history_survives_a_save(window, tmp_path):
    answer(window, "save_path", tmp_path / "one.yard")
    change(window)
    trigger(window, "save")
    trigger(window, "undo")
    assert window.open_yard.yard == YARD


def test_recent_files_that_are_gone_can_be_taken_off(window, tmp_path):
    paths = [tmp_path / f"{n}.yard" for n in range(12)]
    for path in paths:
        save(path, YARD)
        assert window.documents.load(path)
    assert window.documents.recent() == paths[:1:-1]
    paths[-1].unlink()
    window._fill_recent()
    first = window.commands.recent_menu.actions()[0]
    assert "gone" in first.text()
    first.trigger()
    assert paths[-1] not in window.documents.recent()


def test_a_sample_is_opened_as_a_copy(window):
    open_sample(window.documents, samples()[0])
    assert window.open_yard.path is None
    opened = window.open_yard.yard
    assert opened == evolve(read_yard(samples()[0]), uid=opened.uid)
    assert opened.uid


def test_a_yard_file_dropped_on_the_window_is_opened(window, tmp_path):
    path = tmp_path / "dropped.yard"
    save(path, yard_of(plant("A9", "apple:Topaz", (3, 3))))
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path))])
    event = QDropEvent(
        QPointF(QPoint(20, 20)), Qt.DropAction.CopyAction, data, Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
    )
    window.dropEvent(event)
    assert window.open_yard.path == path
    assert window.open_yard.yard.find("A9") is not None


def test_unsaved_work_is_kept_and_offered_again(make_window, tmp_path):
    window = make_window(YARD)
    change(window)
    window.autosave.keep_now()
    window.autosave._bench.wait()
    # The program dies: nothing is closed. Another finds the copy, as if written by a process that is gone.
    (copy,) = recovery.find(window.autosave.folder).copies
    other = make_window()
    other.autosave.folder = window.autosave.folder
    asked = answer(other, "restore", True)
    assert other.autosave.offer(other.questions)
    assert asked
    assert other.open_yard.yard == copy.yard == window.open_yard.yard
    assert other.open_yard.unsaved


def test_a_saved_yard_leaves_no_recovery_copy(window, tmp_path):
    answer(window, "save_path", tmp_path / "one.yard")
    change(window)
    window.autosave.keep_now()
    window.autosave._bench.wait()
    trigger(window, "save")
    assert recovery.find(window.autosave.folder).copies == ()


def test_copy_and_paste_between_windows(make_window):
    one, other = make_window(YARD), make_window(yard_of())
    one.open_yard.select({"A1"})
    trigger(one, "copy")
    trigger(other, "paste")
    (pasted,) = other.open_yard.yard.plantings
    assert pasted.plant.cultivar == "Liberty"
    assert other.open_yard.selection == {pasted.id}
    assert "Liberty" in QApplication.clipboard().text()


def test_cut_takes_it_out_and_paste_brings_it_back(window):
    window.open_yard.select({"A1"})
    trigger(window, "cut")
    assert window.open_yard.yard.plantings == ()
    trigger(window, "paste")
    assert len(window.open_yard.yard.plantings) == 1


def test_a_damaged_clipboard_is_told(window):
    from yardplan.window.clipboard import MIME

    data = QMimeData()
    data.setData(MIME, b"{broken")
    QApplication.clipboard().setMimeData(data)
    told = answer(window, "tell_fault", None)
    trigger(window, "paste")
    assert told
    assert window.open_yard.yard is YARD


def test_size_and_layout_are_remembered(make_window):
    window = make_window()
    window.resize(1100, 700)
    window.side_dock.hide()
    settings = window.settings
    window.close()
    from yardplan.window.main_window import MainWindow

    again = MainWindow(settings=settings, recovery=Path(window.autosave.folder))
    assert again.height() == 700
    assert again.side_dock.isHidden()
    again.close()


def test_the_lasting_name_stays_with_the_file(window, tmp_path):
    """A file from before there were names gets its own when it is opened, and keeps it once saved."""
    save(tmp_path / "old.yard", YARD)
    window.documents.load(tmp_path / "old.yard")
    name = window.open_yard.yard.uid
    assert name
    assert not window.open_yard.unsaved
    window.open_yard.commit("Name", edits.set_site(window.open_yard.yard, name="Another"))
    (tmp_path / "old.yard").rename(tmp_path / "moved.yard")
    window.open_yard.save(tmp_path / "moved.yard")
    window.open_yard.save()
    assert read_yard(tmp_path / "moved.yard").uid == name
    window.open_yard.new(YARD)
    assert window.open_yard.yard.uid not in ("", name)


def test_a_copy_saved_beside_its_original_has_a_lasting_name_of_its_own(window, tmp_path):
    """Calendars of two plans must not overwrite each other's events, whatever is undone or recovered."""
    save(tmp_path / "first.yard", YARD)
    open_yard = window.open_yard
    open_yard.open(tmp_path / "first.yard")
    first = open_yard.yard.uid
    open_yard.commit("Name", edits.set_site(open_yard.yard, name="Another"))
    open_yard.save()
    copied = []
    open_yard.saved.connect(lambda: copied.append(open_yard.yard.uid))
    open_yard.save(tmp_path / "copy.yard")
    second = open_yard.yard.uid
    assert second not in ("", first)
    assert copied == [second]
    assert open_yard.survey.yard.uid == second
    assert not open_yard.unsaved
    assert read_yard(tmp_path / "copy.yard").uid == second
    assert read_yard(tmp_path / "first.yard").uid == first
    open_yard.undo_stack.undo()
    assert open_yard.yard.site.name == YARD.site.name
    assert open_yard.yard.uid == second
    open_yard.undo_stack.redo()
    assert open_yard.yard == read_yard(tmp_path / "copy.yard")
    # A refused save changes nothing: the yard is still the plan it was.
    with pytest.raises(YardFileError):
        open_yard.save(tmp_path / "no such folder" / "third.yard")
    assert open_yard.yard.uid == second
    # Recovered work is the plan it was, until it is saved beside its file.
    open_yard.restore(open_yard.yard, tmp_path / "copy.yard")
    (tmp_path / "beside").mkdir()
    open_yard.save(tmp_path / "beside" / ".." / "copy.yard")
    assert open_yard.yard.uid == second

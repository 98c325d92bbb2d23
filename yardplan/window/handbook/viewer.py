"""The handbook's window: contents and search at the left, the page at the right."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QSize, Qt, QUrl
from PySide6.QtGui import (
    QDesktopServices,
    QKeySequence,
    QResizeEvent,
    QShortcut,
    QTextCharFormat,
    QTextCursor,
    QTextFrameFormat,
)
from PySide6.QtWidgets import (
    QHBoxLayout,
    QListWidget,
    QListWidgetItem,
    QTextBrowser,
    QTextEdit,
    QVBoxLayout,
    QWidget,
)

from yardplan.language import tr, tr_n
from yardplan.window.dialogs.box import BesideBox, closing_line
from yardplan.window.handbook.dress import dress, fit_pictures
from yardplan.window.handbook.pages import CONTENTS, Page, find, folder
from yardplan.window.panels.parts import SearchLine, button, label
from yardplan.window.theme import colours_now, scaled

#: Size of the window and width of its left column at first, pixels.
_SIZE, _COLUMN = (900, 640), 250
#: Air round the page, pixels.
_MARGIN = 12
_ADDRESS_ROLE = Qt.ItemDataRole.UserRole


class _PageView(QTextBrowser):
    """A page; pictures are never wider than the view."""

    def __init__(self) -> None:
        super().__init__()
        self.setOpenLinks(False)
        self.setAccessibleName(tr("Page of the handbook"))
        self.setFrameShape(QTextBrowser.Shape.NoFrame)
        # Tab goes from link to link; the page itself is read with the arrow keys.
        self.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextBrowserInteraction | Qt.TextInteractionFlag.TextSelectableByKeyboard
        )

    def show_text(self, markdown: str) -> None:
        """Show Markdown whose pictures lie beside the pages."""
        document = self.document()
        document.setBaseUrl(QUrl.fromLocalFile(f"{folder()}/"))
        document.setDefaultFont(self.font())
        document.setMarkdown(markdown)
        dress(document, colours_now())
        frame = QTextFrameFormat()
        frame.setMargin(scaled(_MARGIN))
        document.rootFrame().setFrameFormat(frame)
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        fit_pictures(self.document(), self.viewport().width() - 2 * scaled(_MARGIN) - 4)


class HandbookWindow(BesideBox):
    """Shows pages; Esc closes it, Alt+Left goes back, Ctrl+F searches."""

    def __init__(self, pages: Mapping[str, Page], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Handbook"))
        self.pages = pages
        self.address = ""
        self._past: list[str] = []
        self._coming: list[str] = []
        self.search = SearchLine(tr("Find in the handbook"))
        self.list = QListWidget()
        self.list.setAccessibleName(tr("Pages"))
        self.list.setWordWrap(True)
        self.list.setSpacing(2)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.said = label("", "small", wrap=True)
        self.view = _PageView()
        self.back = button("‹", "step", name=tr("Back"), tip=tr("The page before (Alt+Left)"))
        self.forward = button("›", "step", name=tr("Forward"), tip=tr("The page after (Alt+Right)"))
        self.contents = button(tr("Contents"), tip=tr("The list of all pages"))
        self._lay_out()
        self._connect()
        self._show_list("")
        self.go(CONTENTS)

    def _lay_out(self) -> None:
        left, right, top = QVBoxLayout(), QVBoxLayout(), QHBoxLayout()
        for part in (self.search, self.said, self.list):
            left.addWidget(part)
        for each in (self.back, self.forward, self.contents):
            top.addWidget(each)
        top.addStretch()
        right.addLayout(top)
        right.addWidget(self.view, 1)
        column = QWidget()
        column.setLayout(left)
        left.setContentsMargins(0, 0, 0, 0)
        column.setFixedWidth(scaled(_COLUMN))
        across = QHBoxLayout()
        across.setSpacing(12)
        across.addWidget(column)
        across.addLayout(right, 1)
        box = QVBoxLayout(self)
        box.addLayout(across, 1)
        box.addLayout(closing_line(self))
        room = self.screen().availableSize()
        self.resize(QSize(*map(scaled, _SIZE)).boundedTo(room))

    def _connect(self) -> None:
        self.search.textChanged.connect(self._show_list)
        self.search.returnPressed.connect(self._first)
        self.list.itemClicked.connect(self._chosen)
        self.list.itemActivated.connect(self._chosen)
        self.view.anchorClicked.connect(self._follow)
        self.back.clicked.connect(lambda: self._step(self._past, self._coming))
        self.forward.clicked.connect(lambda: self._step(self._coming, self._past))
        self.contents.clicked.connect(lambda: self.go(CONTENTS))
        for keys, does in (
            (QKeySequence.StandardKey.Back, self.back.click),
            (QKeySequence.StandardKey.Forward, self.forward.click),
            (QKeySequence.StandardKey.Find, self._to_search),
        ):
            QShortcut(keys, self).activated.connect(does)

    def _to_search(self) -> None:
        self.search.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.search.selectAll()

    # The list

    def _show_list(self, words: str) -> None:
        """All pages, or what is found."""
        self.list.clear()
        if words.strip():
            found = find(words, self.pages)
            for each in found:
                section = each.section
                head = section.title
                if section.heading != section.title:
                    head = f"{section.title}: {section.heading}"
                self._add(f"{head}\n{each.piece}", section.address)
            none = tr("Nothing found. Try one word, or a part of it.")
            self.said.setText(tr_n("{n} place", "{n} places", len(found)) if found else none)
        else:
            for page in self.pages.values():
                self._add(page.title, page.name)
            self.said.setText("")
        self.said.setVisible(bool(self.said.text()))
        self._mark()

    def _add(self, words: str, address: str) -> None:
        item = QListWidgetItem(words)
        item.setData(_ADDRESS_ROLE, address)
        self.list.addItem(item)

    def _first(self) -> None:
        if self.list.count():
            self.list.setCurrentRow(0)
            self._chosen(self.list.item(0))

    def _chosen(self, item: QListWidgetItem) -> None:
        self.go(item.data(_ADDRESS_ROLE))

    def _mark(self) -> None:
        """Mark the page that shows in the list of pages."""
        if not self.search.text().strip():
            names = list(self.pages)
            name = self.address.partition("#")[0]
            self.list.setCurrentRow(names.index(name) if name in names else -1)

    # Pages

    def go(self, address: str) -> None:
        """Show a page, `name` or `name#section`, and remember the one before."""
        if self.address and address != self.address:
            self._past.append(self.address)
            self._coming.clear()
        self._show(address)

    def _step(self, source: list[str], other: list[str]) -> None:
        if source:
            other.append(self.address)
            self._show(source.pop())

    def _show(self, address: str) -> None:
        name, _, section = address.partition("#")
        if name not in self.pages:
            name, section = CONTENTS, ""
        self.address = f"{name}#{section}" if section else name
        page = self.pages[name]
        self.view.show_text(page.text)
        self.setWindowTitle(tr("Handbook: {page}", page=page.title))
        self.view.setAccessibleDescription(page.title)
        self._to_section(section)
        self._show_found()
        self._mark()
        self.back.setEnabled(bool(self._past))
        self.forward.setEnabled(bool(self._coming))

    def _to_section(self, section: str) -> None:
        """Begin at the heading, at the top of the view."""
        document, page = self.view.document(), self.pages[self.address.partition("#")[0]]
        block, number = document.begin(), -1
        while section and block.isValid():
            heading = bool(block.blockFormat().headingLevel())
            number += heading
            if heading and page.anchor(number, block.text()) == section:
                top = document.documentLayout().blockBoundingRect(block).top()
                self.view.setTextCursor(QTextCursor(block))
                self.view.verticalScrollBar().setValue(round(top) - scaled(4))
                return
            block = block.next()
        self.view.setTextCursor(QTextCursor(document))
        self.view.verticalScrollBar().setValue(0)

    def _show_found(self) -> None:
        """Mark the words looked for on the page."""
        marks = []
        look = QTextCharFormat()
        look.setBackground(self.palette().highlight())
        look.setForeground(self.palette().highlightedText())
        for word in self.search.text().split():
            cursor = self.view.document().find(word)
            while not cursor.isNull():
                mark = QTextEdit.ExtraSelection()
                mark.cursor, mark.format = cursor, look
                marks.append(mark)
                cursor = self.view.document().find(word, cursor)
        self.view.setExtraSelections(marks)

    def _follow(self, url: QUrl) -> None:
        """A link to another page, or out to the browser of the system."""
        if url.scheme() in ("http", "https"):
            QDesktopServices.openUrl(url)
            return
        name = url.fileName().removesuffix(".md") or self.address.partition("#")[0]
        self.go(f"{name}#{url.fragment()}" if url.hasFragment() else name)

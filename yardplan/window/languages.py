"""The languages the window can speak, and the choice among them. Shipped in resources/languages."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QSettings, QTranslator

from yardplan import language, shipped

_SETTING = "language"
#: By code: its name in itself. English needs no file.
LANGUAGES: dict[str, str] = {"en": "English", "de": "Deutsch"}


def chosen(settings: QSettings) -> str:
    """What the user asked for: a code, or "system"."""
    stored = str(settings.value(_SETTING, "system"))
    return stored if stored in LANGUAGES else "system"


def choose(settings: QSettings, code: str) -> None:
    """Remember the language for the next start. `code` is a key of LANGUAGES or "system"."""
    settings.setValue(_SETTING, code)


#: The translators of the language spoken.
_installed: list[QTranslator] = []


def in_force(settings: QSettings) -> str:
    """The code of the language to speak: the choice, else the system's first known, else English."""
    code = chosen(settings)
    if code != "system":
        return code
    wanted = (name.partition("-")[0].partition("_")[0] for name in QLocale.system().uiLanguages())
    return next((name for name in wanted if name in LANGUAGES), "en")


def speak(code: str) -> None:
    """Speak this language from now on. Called before any window is made."""
    app = QCoreApplication.instance()
    assert app is not None
    # Kept, not asked of Qt: to look for children by their kind takes a tenth of the whole start.
    for old in _installed:
        QCoreApplication.removeTranslator(old)
        old.deleteLater()
    _installed.clear()
    locale = QLocale.system() if QLocale.system().name().startswith(code) else QLocale(code)
    QLocale.setDefault(locale)
    if code == "en":
        language.install(None)
        return
    ours, qts = QTranslator(app), QTranslator(app)
    ours.load(str(shipped.resource("languages", f"yardplan_{code}.qm")))
    if qts.load(f"qtbase_{code}", QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)):
        QCoreApplication.installTranslator(qts)
    QCoreApplication.installTranslator(ours)
    _installed.extend((ours, qts))
    language.install(_look_up, decimal_point=locale.decimalPoint(), code=code)


def _look_up(text: str, n: int = -1) -> str:
    # Asked with bytes, as Qt keys its texts.
    return QCoreApplication.translate(language.CONTEXT, text, None, n)

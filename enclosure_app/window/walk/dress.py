"""How the walk is dressed: large words, and nothing to touch that is smaller than a fingertip.

Colours are the window's own. Buttons have an edge of the ink itself, to be seen in bright sun.
"""

BARS = """
QPushButton { min-height: 38px; font-size: 12pt; padding: 3px 12px; }
QLabel { font-size: 12pt; }
"""
"""For the bars above the walk, which say what takes long and what could not be done."""

WALK = """
QWidget#walk QPushButton { min-height: 38px; font-size: 12pt; padding: 3px 12px;
        border: 2px solid palette(window-text); }
QWidget#walk QPushButton:checked { background: palette(window-text); color: palette(window); }
QWidget#walk QPushButton:disabled { border-color: palette(mid); }
QWidget#walk QPushButton:focus { border: 3px solid palette(link); }
QWidget#walk QPushButton#main { font-size: 13pt; border-color: palette(link); }
QWidget#walk QPushButton#main:disabled { background: palette(window); color: palette(mid);
        border: 2px solid palette(mid); }
QWidget#walk QPushButton#photograph { padding: 2px; }
QWidget#walk QPushButton#link { border: 0; text-align: left; }
QWidget#walk QLineEdit { min-height: 34px; font-size: 13pt; border: 2px solid palette(window-text); }
QWidget#walk QLabel, QWidget#walk QTextBrowser { font-size: 12pt; }
QWidget#walk QLabel#asked { font-size: 16pt; font-weight: 600; }
QWidget#walk QFrame#card QLabel#asked { font-size: 13pt; }
QWidget#walk QFrame#card[chosen="true"] { border: 3px solid palette(link); }
QWidget#walk QLabel#advice { font-size: 14pt; }
QWidget#walk QLabel#figure { font-size: 22pt; font-weight: 600; }
QWidget#walk QLabel#small { font-size: 10pt; }
QWidget#walk QLabel#kind { font-size: 12pt; font-weight: 600; }
QWidget#walk QLabel#progress { font-size: 22pt; font-weight: 600; }
"""

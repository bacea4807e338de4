"""Reading in a process of its own: the same as here, ended when asked, and honest when it dies."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from threading import Thread, Timer

import pytest
from pytestqt.qtbot import QtBot

from enclosure_app.errors import EnclosureError, ListedError
from enclosure_app.files.project.file import save_project
from enclosure_app.files.projects import limits_of
from enclosure_app.progress import Progress, StoppedError
from enclosure_app.reports.pdf.report import write_sheets
from enclosure_app.resources import sample
from enclosure_app.window.apart.orders import NotReadError, Order, read_order
from enclosure_app.window.apart.reading import Reader, SheetOrder
from enclosure_app.window.filing.printing import drawn, job_for
from enclosure_app.window.judging import judge

pypdf = pytest.importorskip("pypdf")


@pytest.fixture(scope="module")
def reader() -> Iterator[Reader]:
    made = Reader()
    yield made
    made.close()


def test_it_reads_the_very_same_and_one_file_after_another(reader: Reader) -> None:
    order = Order((sample("eave-flush-faulty.dxf"),), layers=sample("layers-second-office.toml"))
    other = Order((sample("window.dxf"),), layers=sample("layers.toml"))
    assert reader.read(order, Progress()) == read_order(order)
    assert reader.read(other, Progress()) == read_order(other)


def test_a_project_is_read_too(reader: Reader, tmp_path: Path) -> None:
    kept = tmp_path / "ridge.enclosure.json"
    save_project(read_order(Order((sample("ridge.dxf"),))), kept)
    order = Order((kept,))
    assert reader.read(order, Progress()) == read_order(order)


def test_a_refusal_comes_over_word_for_word(reader: Reader, tmp_path: Path) -> None:
    order = Order((tmp_path / "gone.dxf",))
    with pytest.raises(EnclosureError) as here:
        read_order(order)
    with pytest.raises(NotReadError) as there:
        reader.read(order, Progress())
    assert str(there.value) == str(here.value)
    assert there.value.path == order.paths[0]


def test_several_mistakes_come_over_one_by_one(reader: Reader, tmp_path: Path) -> None:
    """Their kind asks for sentences, of which the text alone says nothing."""
    layers = tmp_path / "layers.toml"
    layers.write_text('[[layers]]\nmatch = 3\nproduct = "x"\n[[layers]]\nmatch = 4\n')
    order = Order((sample("ridge.dxf"),), layers=layers)
    with pytest.raises(ListedError) as here:
        read_order(order)
    with pytest.raises(ListedError) as there:
        reader.read(order, Progress())
    assert len(here.value.sentences) > 1
    assert there.value.sentences == here.value.sentences


def test_it_tells_how_far_it_is(reader: Reader, large: Path) -> None:
    progress = Progress()
    told: list[float] = []
    reading = Thread(target=reader.read, args=(Order((large,)), progress))
    reading.start()
    while reading.is_alive():
        told.append(progress.share or 0.0)
        reading.join(0.02)
    assert told == sorted(told)
    assert len({round(share, 2) for share in told}) > 4
    assert told[-1] > 0.55


def test_it_is_ended_at_once_and_the_next_is_read_all_the_same(
    reader: Reader, large: Path
) -> None:
    progress = Progress()
    Timer(0.2, progress.stop).start()
    with pytest.raises(StoppedError):
        reader.read(Order((large,)), progress)
    order = Order((sample("ridge.dxf"),))
    assert reader.read(order, Progress()) == read_order(order)


def test_a_process_that_dies_is_told_with_what_to_do(reader: Reader, large: Path) -> None:
    reader.warm()
    process = reader._process  # noqa: SLF001  what a system short of memory would end
    assert process is not None
    Timer(0.3, process.kill).start()
    with pytest.raises(EnclosureError, match=r"large\.dxf: reading it was ended from outside"):
        reader.read(Order((large,)), Progress())
    assert process.poll() is not None
    order = Order((sample("ridge.dxf"),))
    assert reader.read(order, Progress()) == read_order(order)


def test_a_closed_reader_leaves_no_process(large: Path) -> None:
    reader = Reader()
    reader.warm()
    process = reader._process  # noqa: SLF001  as above
    assert process is not None
    reader.close()
    assert process.poll() is not None


def test_it_speaks_the_language_of_the_window(tmp_path: Path) -> None:
    if not (Path(__file__).parents[3] / "resources" / "languages" / "de.qm").is_file():
        pytest.skip("The other language is not there yet.")
    reader = Reader("de")
    try:
        with pytest.raises(NotReadError) as told:
            reader.read(Order((tmp_path / "fehlt.dxf",)), Progress())
    finally:
        reader.close()
    with pytest.raises(NotReadError) as english:
        read_order(Order((tmp_path / "fehlt.dxf",)))
    assert "fehlt.dxf" in str(told.value)
    assert str(told.value) != str(english.value)


@pytest.fixture(scope="module")
def sheet() -> SheetOrder:
    """Return the order for a sheet; the path is to be put in."""
    order = Order((sample("ridge.dxf"),), layers=sample("layers-second-office.toml"))
    project = read_order(order)
    results = judge(project, limits_of(project)).results
    return SheetOrder(Path(), (drawn(project, results),), job_for(project))


def test_a_sheet_is_written_there_as_it_is_here(
    reader: Reader, sheet: SheetOrder, qtbot: QtBot, tmp_path: Path
) -> None:
    there, here = tmp_path / "there.pdf", tmp_path / "here.pdf"
    progress = Progress()
    reader.write(replace(sheet, path=there), progress)
    write_sheets(here, sheet.results, sheet.job)
    read = [pypdf.PdfReader(path).pages[0].extract_text() for path in (there, here)]
    assert read[0] == read[1]
    assert "RIDGE" in read[0]
    assert progress.share is not None


def test_a_sheet_that_cannot_be_written_is_told(
    reader: Reader, sheet: SheetOrder, tmp_path: Path
) -> None:
    with pytest.raises(EnclosureError, match="cannot be written"):
        reader.write(replace(sheet, path=tmp_path / "no" / "sheet.pdf"), Progress())


def test_a_sheet_that_is_stopped_leaves_nothing_behind(
    reader: Reader, sheet: SheetOrder, tmp_path: Path
) -> None:
    path = tmp_path / "sheet.pdf"
    path.write_bytes(b"the one before")
    (tmp_path / ".sheet.pdf.0123.part").touch()  # as if it had begun
    progress = Progress()
    progress.stop()
    with pytest.raises(StoppedError):
        reader.write(replace(sheet, path=path), progress)
    assert path.read_bytes() == b"the one before"
    assert [each.name for each in tmp_path.iterdir()] == ["sheet.pdf"]

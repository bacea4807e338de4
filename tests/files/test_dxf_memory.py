"""The collector is off only inside, and only if it was on."""

import gc

import pytest

from enclosure_app.files.dxf_memory import kept_in_use


def test_the_collector_is_back_on_afterwards() -> None:
    with kept_in_use():
        assert not gc.isenabled()
    assert gc.isenabled()


def test_the_collector_is_back_on_after_an_error() -> None:
    with pytest.raises(KeyError), kept_in_use():
        raise KeyError
    assert gc.isenabled()


def test_a_collector_that_was_off_stays_off() -> None:
    gc.disable()
    try:
        with kept_in_use():
            pass
        assert not gc.isenabled()
    finally:
        gc.enable()

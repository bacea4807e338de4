"""The collector is off only inside, and only if it was on."""

import gc

import pytest

from enclosure_app.files.dxf.memory import kept_in_use, set_aside


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


def test_what_is_set_aside_is_not_looked_through_again() -> None:
    kept = [[n] for n in range(5000)]
    frozen = gc.get_freeze_count()
    try:
        set_aside()
        assert gc.get_freeze_count() >= frozen + 5000
        assert all(each is not kept for each in gc.get_objects())
    finally:
        gc.unfreeze()
    assert len(kept) == 5000

"""The same finding always has the same name outside, and two findings never do."""

from dataclasses import replace

from enclosure_app.reports.names import finding_guid, guid, urn
from tests.drawing import eave


def test_a_finding_keeps_its_name_whatever_is_measured() -> None:
    moved = replace(eave.GAP, at=(1.0, 2.0), measured=31.0, message="Other words.")
    assert finding_guid(eave.GAP.key, "Eave") == finding_guid(moved.key, "Eave")
    assert str(finding_guid(eave.GAP.key, "Eave")) == "6a83490e-fa28-5f9c-b563-2a6963c5d6d1"


def test_other_findings_and_other_sections_have_other_names() -> None:
    names = {finding_guid(f.key, s) for f in (eave.GAP, eave.SHORT) for s in ("Eave", "Ridge")}
    assert len(names) == 4
    assert guid("a", "bc") != guid("ab", "c")


def test_a_name_is_made_of_a_name_and_an_address_of_it() -> None:
    name = finding_guid(eave.GAP.key, "\udce4ave")
    assert name.version == 5
    assert urn(eave.GAP, "\udce4ave") == f"urn:uuid:{name}"

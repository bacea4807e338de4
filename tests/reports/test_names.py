"""The same finding always has the same name outside, and two findings never do."""

from dataclasses import replace

from enclosure_app.reports.names import finding_guid, guid, urn
from tests.drawing import eave


def test_a_finding_keeps_its_name_whatever_is_measured() -> None:
    moved = replace(eave.GAP, at=(1.0, 2.0), measured=31.0, message="Other words.")
    assert finding_guid(eave.GAP.key, "Eave", "1f2e") == finding_guid(moved.key, "Eave", "1f2e")
    assert (
        str(finding_guid(eave.GAP.key, "Eave", "1f2e")) == "1d2cbcff-923e-5fed-b797-338e3399c36a"
    )


def test_other_findings_and_other_sections_and_other_buildings_have_other_names() -> None:
    names = {
        finding_guid(f.key, s, c)
        for f in (eave.GAP, eave.SHORT)
        for s in ("Eave", "Ridge")
        for c in "ab"
    }
    assert len(names) == 8
    assert guid("a", "bc") != guid("ab", "c")


def test_a_name_is_made_of_a_name_and_an_address_of_it() -> None:
    name = finding_guid(eave.GAP.key, "\udce4ave", "")
    assert name.version == 5
    assert urn(eave.GAP, "\udce4ave", "") == f"urn:uuid:{name}"

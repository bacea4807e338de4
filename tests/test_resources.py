"""Files of the program are found by name, and nothing outside of their folders is."""

import pytest

from enclosure_app.resources import resource, sample


def test_a_resource_and_a_sample_are_found() -> None:
    assert '"$schema"' in resource("report.schema.json").read_text(encoding="utf-8")
    assert sample("layers.toml").is_file()


@pytest.mark.parametrize("name", ["../README.md", "fonts/../../pyproject.toml", "/etc/hosts"])
def test_no_name_leads_out_of_the_folder(name: str) -> None:
    with pytest.raises(ValueError, match="leads out of the folder"):
        resource(name)

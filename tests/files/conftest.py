"""Lets the tests of this folder write ``from random_projects import ...``."""

import importlib.util
import sys
from pathlib import Path

if "random_projects" not in sys.modules:
    spec = importlib.util.spec_from_file_location(
        "random_projects", Path(__file__).with_name("random_projects.py")
    )
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules["random_projects"] = module
    spec.loader.exec_module(module)

"""evencatch in Python: a data frame of catches in, data frames out, the digits of the library.

Nothing is ported: the package's one script runs in Node, or in a JavaScript engine inside Python. Needs pandas.
"""

import json
import subprocess
from pathlib import Path

import pandas


class EvencatchError(ValueError):
    """Catches, setup or options that cannot be used; `issues` has every problem with its place."""

    def __init__(self, error):
        super().__init__(error["message"])
        self.code = error["code"]
        self.issues = error["issues"]


def evencatch(catches, setup=None, options=None, core=None, engine=None):
    """Asks every question of a table of catches.

    catches  data frame, one row a catch, with the columns of a file of catches: turns and net_kg at least
    setup    dict as a setup file holds, or the path of one; None: none
    options  dict, such as {"tolerance": 0.03, "language": "de"}
    core     path of evencatch.core.js; None: of the package installed here, or above
    engine   an engine inside Python with `eval(code)` and `call(name, text)`, such as MiniRacer(); None: Node
    returns  dict of data frames by name
    raises   EvencatchError with every problem found
    """
    script = Path(core) if core is not None else _core()
    if isinstance(setup, (str, Path)):
        setup = json.loads(Path(setup).read_text(encoding="utf-8"))
    question = json.dumps(
        {"rows": _rows(catches), "setup": setup, "options": options or {}}, allow_nan=False
    )
    answer = json.loads(_in_node(script, question) if engine is None else _inside(engine, script, question))
    if "error" in answer:
        raise EvencatchError(answer["error"])
    return {name: pandas.DataFrame(rows) for name, rows in answer["tables"].items()}


def _rows(catches):
    columns = {name: [_cell(value) for value in catches[name]] for name in catches.columns}
    return [dict(zip(columns, row)) for row in zip(*columns.values())]


def _cell(value):
    """What JSON has a word for: a gap is null, a time is written out, a number of numpy is Python's."""
    if pandas.isna(value):
        return None
    if hasattr(value, "isoformat"):
        return value.isoformat(timespec="minutes") if hasattr(value, "hour") else value.isoformat()
    return value.item() if hasattr(value, "item") else value


_run = """
const { readFileSync } = require("node:fs");
require("node:vm").runInThisContext(readFileSync(process.argv[1], "utf8"));
process.stdout.write(evencatch.answerJson(readFileSync(0, "utf8")));
"""


def _in_node(script, question):
    done = subprocess.run(
        ["node", "-e", _run, str(script)], input=question, capture_output=True, encoding="utf-8"
    )
    if done.returncode != 0:
        raise RuntimeError(f"node could not run {script}: {done.stderr.strip()}")
    return done.stdout


def _inside(engine, script, question):
    engine.eval(script.read_text(encoding="utf-8"))
    return engine.call("evencatch.answerJson", question)


def _core():
    here = Path.cwd()
    for folder in (here, *here.parents):
        for inside in ("node_modules/evencatch/dist/evencatch.core.js", "dist/evencatch.core.js"):
            if (folder / inside).exists():
                return folder / inside
    raise FileNotFoundError("evencatch.core.js is not here: npm install evencatch, or name it as `core`")

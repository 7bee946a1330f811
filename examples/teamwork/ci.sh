#!/usr/bin/env bash
#
# A pipeline that any CI can call: it judges every public-address design below a
# folder, keeps what was found in forms that machines read, and hands it on.
#
#     bash ci.sh [FOLDER [RESULTS]]
#
# FOLDER is where the designs lie (default: the current one), RESULTS where the
# results go (default: results). The exit status is that of loudlint check: 0 when
# nothing found is as grave as the gate, 1 when something is, 2 when a design could
# not be understood. Results are there, and handed on, in each case.
#
# These variables of the environment change what is done:
#
#     LOUDLINT  the program (default: loudlint)
#     GATE      least severity that fails the pipeline: error, warning (default) or note
#     RECORD    a file of known findings, which do not fail it (default: known.record, if there is one)
#     UPLOAD    a command that takes the SARIF file as its last word and hands it to
#               your code-scanning service; without it nothing is handed on

set -uo pipefail

folder=${1:-.}
results=${2:-results}
loudlint=${LOUDLINT:-loudlint}
record=${RECORD:-known.record}

flags=(--below "$folder" --gate "${GATE:-warning}")
[ ! -f "$record" ] || flags+=(--record "$record")
mkdir -p "$results" || exit 2

# For people, in the log: each design, and a table of all at the end.
"$loudlint" check "${flags[@]}"
status=$?

# For a code-scanning service: every answer with its evidence, a run for each design.
"$loudlint" check "${flags[@]}" --format sarif --output "$results/loudlint.sarif" || [ $? -eq "$status" ] || status=2

# For a CI that shows outcomes as tests: a suite for each design.
"$loudlint" check "${flags[@]}" --format junit --output "$results/loudlint.junit.xml" || [ $? -eq "$status" ] || status=2

# A line for each finding, for scripts of your own.
"$loudlint" check "${flags[@]}" --format lines --output "$results/findings.txt" || [ $? -eq "$status" ] || status=2

if [ -n "${UPLOAD:-}" ]; then
  # The words of UPLOAD are parted at spaces, as you would type them.
  # shellcheck disable=SC2086
  $UPLOAD "$results/loudlint.sarif" || { echo "ci: the upload failed: $UPLOAD" >&2; [ "$status" -ne 0 ] || status=2; }
fi
exit "$status"

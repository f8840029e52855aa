#!/usr/bin/env bash
# Feeds one of the readers with what afl++ makes up: fuzz.sh parse|house|table [SECONDS] [WORK FOLDER].
# Needs afl++ (Debian: apt-get install afl++) and "dotnet tool install --global SharpFuzz.CommandLine".
# What made the reader fail is left in WORK FOLDER/TARGET/default/crashes and .../hangs.
set -euo pipefail
target="${1:?say what to feed: parse, house or table}" seconds="${2:-600}" work="$(realpath -m "${3:-fuzzing.tmp}")"
here="$(cd "$(dirname "$0")" && pwd)"
program="$here/bin/fuzz"
export DOTNET_ROLL_FORWARD=LatestMajor AFL_SKIP_BIN_CHECK=1 AFL_SKIP_CPUFREQ=1 AFL_I_DONT_CARE_ABOUT_MISSING_CRASHES=1 AFL_NO_UI=1 AFL_NO_AFFINITY=1
export DOTNET_TieredPGO=0

rm -rf "$program" && dotnet publish "$here" -c Release -o "$program" --nologo -v q
dotnet "$program/ScoreRules.Fuzzing.dll" seeds "$work/seeds"
for file in ScoreRules.Language ScoreRules Superpower; do sharpfuzz "$program/$file.dll"; done

seeds="$work/seeds/rules"; [ "$target" = table ] && seeds="$work/seeds/tables"
afl-fuzz -i "$seeds" -o "$work/$target" -x "$work/seeds/words.dict" -V "$seconds" -t 5000 -m none -- dotnet "$program/ScoreRules.Fuzzing.dll" "$target"

#!/usr/bin/env bash
# Times the published program and another command on the same trial folder, in alternation.
# usage: side-by-side.sh [--native] ROUNDS FOLDER COMMAND...   where COMMAND takes FOLDER and an output folder after its own words
# --native publishes a native program, which needs a C linker; else code compiled ahead that starts in the runtime.
# Prints, per round, seconds and peak KiB of both, then the medians and their ratios. Needs GNU time.
set -euo pipefail
how=(-p:PublishReadyToRun=true --self-contained false)
if [ "$1" = --native ]; then
    how=(-p:PublishAot=true)
    shift
fi
rounds=$1 folder=$2
shift 2
root=$(cd "$(dirname "$0")/../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
dotnet publish "$root/src/TrialKit.Cli" -c Release -r linux-x64 "${how[@]}" -o "$work/program" >/dev/null
mkdir "$work/ours" "$work/theirs"

measure() { /usr/bin/time -f '%e %M' -o "$work/time" "$@" >/dev/null 2>"$work/error" || { cat "$work/error" >&2; exit 1; }; cat "$work/time"; }

for _ in $(seq "$rounds"); do
    ours=$(measure "$work/program/trialkit" analyze "$folder" --output "$work/ours")
    theirs=$(measure "$@" "$folder" "$work/theirs")
    echo "$ours $theirs"
done | tee "$work/rounds"

median() { cut -d' ' -f"$1" "$work/rounds" | sort -n | awk '{ v[NR] = $1 } END { print (v[int((NR + 1) / 2)] + v[int(NR / 2) + 1]) / 2 }'; }
awk -v a="$(median 1)" -v b="$(median 3)" -v m="$(median 2)" -v n="$(median 4)" \
    'BEGIN { printf "seconds %.2f and %.2f, ratio %.2f; MiB %.0f and %.0f, ratio %.2f\n", a, b, a / b, m / 1024, n / 1024, m / n }'

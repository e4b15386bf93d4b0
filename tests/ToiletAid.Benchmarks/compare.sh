#!/usr/bin/env bash
# In one run on one machine: the ranking arithmetic against NumPy on one core, whole profiles on one and two cores, memory and time for
# two sizes of set, and starting up. Compare numbers of one run only, on a machine that does nothing else.
# Debian packages: python3-numpy, hyperfine, time. Usage: compare.sh [PEOPLE [OPTIONS OF RANK]...], such as compare.sh 100000 --draws 8
set -euo pipefail
cd "$(dirname "$0")/../.."
people="${1:-2000}"
shift || true
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
native=artifacts/publish/ToiletAidTui/release_linux-x64/toiletaid
built=artifacts/bin/ToiletAidTui/release/toiletaid
[ -x "$native" ] || { echo "Publish first: dotnet publish src/ToiletAidTui -c Release -r linux-x64"; exit 1; }
dotnet build tests/ToiletAid.Benchmarks -c Release -v q >/dev/null
dotnet build src/ToiletAidTui -c Release -v q >/dev/null

load() { echo "load $(cut -d' ' -f1-3 /proc/loadavg)"; }
grep -m1 'model name' /proc/cpuinfo | sed 's/.*: /processor: /'
echo "cores: $(nproc), $(load), $(date -I), rank options: ${*:-none}"
echo

# NumPy chooses its own kernel: one that was forced upon it could be a slow one.
unset OPENBLAS_CORETYPE OPENBLAS_L2_SIZE
export OMP_NUM_THREADS=1 OPENBLAS_NUM_THREADS=1 MKL_NUM_THREADS=1
for round in 1 2 3; do
    DOTNET_TieredCompilation=0 taskset -c 0 artifacts/bin/ToiletAid.Benchmarks/release/ToiletAid.Benchmarks compare "$work"
    taskset -c 0 /usr/bin/python3 tests/ToiletAid.Benchmarks/reference.py "$work"
done
load
echo

"$native" simulate --people "$people" >"$work/people.ndjson"
head -n $((people / 10)) "$work/people.ndjson" >"$work/tenth.ndjson"
measure() { /usr/bin/time -f "$1: %e s, %U s of user time, %M kB at most" "${@:2}" 2>&1 >"$work/out"; }
measure "$((people / 10)) people, 1 job" "$native" rank "$work/tenth.ndjson" --format csv --jobs 1 "$@"
measure "$people people, 1 job" "$native" rank "$work/people.ndjson" --format csv --jobs 1 "$@"
sha256sum <"$work/out"
measure "$people people, 2 jobs" "$native" rank "$work/people.ndjson" --format csv --jobs 2 "$@"
sha256sum <"$work/out"
load
echo

python3 tests/ToiletAid.Benchmarks/start.py 20 native "$native" framework-dependent "$built"
head -n 1 "$work/people.ndjson" >"$work/one.json"
hyperfine -N --warmup 3 --runs 20 --style none --export-json "$work/start.json" \
    -n "native, rank of one profile" "$native rank $work/one.json" \
    -n "framework-dependent, rank of one profile" "$built rank $work/one.json" >/dev/null 2>&1
python3 - "$work/start.json" <<'PY'
import json, sys
for r in json.load(open(sys.argv[1]))["results"]:
    print(f"{r['command']}: median {r['median'] * 1000:.0f} ms, least {r['min'] * 1000:.0f} ms, processor time {(r['user'] + r['system']) * 1000:.0f} ms")
PY
load

#!/usr/bin/env bash
# Compares the native command, as whole processes, with general-purpose tools that move the same bytes.
# Each figure is the median of the ratios of pairs run in turn, so that a machine that changes speed changes both.
#
#   tests/Cartwright.Benchmarks/compare.sh [RUNS]      RUNS: pairs a comparison, 15 unless told otherwise
set -euo pipefail
cd "$(dirname "$0")/../.."
runs=${1:-15}
native=artifacts/native/cartwright
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

[ -x "$native" ] || dotnet publish src/Cartwright.Cli -c Release -r linux-x64 -o artifacts/native -v quiet --nologo

microseconds() { # command line
  local before=$EPOCHREALTIME
  eval "$1" > /dev/null 2>&1
  local after=$EPOCHREALTIME
  echo $((${after/./} - ${before/./}))
}

median() { sort -n | awk '{ row[NR] = $1 } END { print (NR % 2) ? row[(NR + 1) / 2] : (row[NR / 2] + row[NR / 2 + 1]) / 2 }'; }

compare() { # title, target, ours, theirs, [what comes before each of ours and is not timed]
  local ours="" theirs="" ratios="" a b
  eval "$3" > /dev/null 2>&1
  eval "$4" > /dev/null 2>&1
  for ((i = 0; i < runs; i++)); do
    eval "${5:-}"
    a=$(microseconds "$3")
    b=$(microseconds "$4")
    ours+="$a"$'\n'
    theirs+="$b"$'\n'
    ratios+="$(awk -v a="$a" -v b="$b" 'BEGIN { printf "%.3f", a / b }')"$'\n'
  done
  printf '%-62s ratio %5.2f (target %s)   %7.1f ms against %7.1f ms\n' "$1" \
    "$(printf %s "$ratios" | median)" "$2" \
    "$(printf %s "$ours" | median | awk '{ print $1 / 1000 }')" "$(printf %s "$theirs" | median | awk '{ print $1 / 1000 }')"
}

compare "--version against objcopy --version" "1.5" "$native --version" "objcopy --version"
compare "--help against objcopy --version" "2.0" "$native --help" "objcopy --version"

# A 512 KiB Mega Drive cart onto two 8-bit chips: record, CRC-32 and SHA-256 of every file.
"$native" build examples/lantern-tide-md --out "$work/two" > /dev/null
cp "$work/two/lantern-tide-md.md" "$work/rom.bin"
tools="objcopy -I binary -O binary --interleave=2 --byte=0 $work/rom.bin $work/even.bin
objcopy -I binary -O binary --interleave=2 --byte=1 $work/rom.bin $work/odd.bin
cksum $work/rom.bin $work/even.bin $work/odd.bin
sha256sum $work/rom.bin $work/even.bin $work/odd.bin"
compare "512 KiB onto two 8-bit chips against objcopy, cksum, sha256sum" "1.0" "$native build examples/lantern-tide-md --out $work/two" "$tools" "rm -f $work/two/*.record.json"
compare "the same build again, nothing changed, against objcopy --version" "3.0" "$native build examples/lantern-tide-md --out $work/two" "objcopy --version"

# A 4 MiB Mega Drive cart onto one 16-bit chip in programmer word order.
mkdir -p "$work/large"
{ cat "$work/rom.bin"; head -c $((4194304 - 524288)) /dev/urandom; } > "$work/large/program.bin"
cat > "$work/large/cart.json" <<'J'
{
  "cart": { "name": "large", "platform": "md", "title": "LANTERN TIDE" },
  "programs": [{ "file": "program.bin", "offset": "0" }],
  "rom": { "size": "4MiB" },
  "header": { "copyright": "(C)QLMR 2026.NOV", "devices": "3-button-pad", "region": "japan americas europe" },
  "board": { "use": "md-single-16bit" },
  "images": { "wordOrder": "programmer" }
}
J
tools="dd if=$work/large/program.bin of=$work/swapped.bin conv=swab bs=1M status=none
sha256sum $work/large/program.bin $work/swapped.bin"
compare "4 MiB onto one 16-bit chip against dd conv=swab, sha256sum" "2.0" "$native build $work/large" "$tools" "rm -f $work/large/dist/*.record.json"

# A 32 MiB Game Boy Advance image.
"$native" build examples/lantern-tide-gba --out "$work/gba" > /dev/null
{ cat "$work/gba/lantern-tide-gba.gba"; head -c $((33554432 - 65536)) /dev/urandom; } > "$work/large.gba"
compare "examine of 32 MiB against sha256sum" "1.5" "$native examine $work/large.gba" "sha256sum $work/large.gba"

# A folder of 1000 images of 128 KiB, all of them different.
mkdir "$work/many"
for ((i = 0; i < 1000; i++)); do
  { head -c 130000 "$work/rom.bin"; printf '%01072d' "$i"; } > "$work/many/$i.md"
done
compare "examine --brief of 1000 images against sha256sum" "1.5" "$native examine --brief $work/many" "sha256sum $work/many/*"

# A patch that changes a tenth of a 16 MiB image.
head -c 16777216 "$work/large.gba" > "$work/base.gba"
{ head -c 15000000 "$work/base.gba"; head -c 1777216 /dev/urandom; } > "$work/later.gba"
"$native" patch make "$work/base.gba" "$work/later.gba" --out "$work/later.bps" > /dev/null
compare "BPS patch of 16 MiB against cp, cksum" "3.0" "rm -f $work/made.gba; $native patch --no-mend $work/base.gba $work/later.bps --out $work/made.gba" \
  "cp $work/base.gba $work/copy.gba; cksum $work/base.gba $work/later.bps $work/later.gba"

if [ -x /usr/bin/time ]; then
  peak=$(/usr/bin/time -f %M "$native" build "$work/large" 2>&1 > /dev/null | tail -n 1)
  awk -v peak="$peak" 'BEGIN { printf "%-62s %5.1f MiB (target below %d MiB)\n", "peak memory of the 4 MiB build", peak / 1024, 3 * 4 + 30 }'
else
  echo "peak memory: not measured, because /usr/bin/time is not installed"
fi

#!/bin/sh
# Assembles this cart's programs from src/.
#
#   ./rebuild.sh [OUTDIR]       OUTDIR: default out/ beside this script
#
# The same sources give the same bytes, from whatever folder it is started.
# Exit status: 0 built, 3 an assembler is missing, else the assembler's own.
set -eu

here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
out=${1:-$here/out}

# Any assembler of the GNU binutils would do: the source is bytes, and only addresses are worked out.
for tool in m68k-linux-gnu-as m68k-linux-gnu-objcopy; do
    if ! command -v "$tool" >/dev/null 2>&1; then
        echo "rebuild.sh: $tool is missing; install the package binutils-m68k-linux-gnu" >&2
        exit 3
    fi
done

mkdir -p -- "$out"
out=$(CDPATH='' cd -- "$out" && pwd)
work=$(mktemp -d)
trap 'rm -rf -- "$work"' EXIT
trap 'exit 1' HUP INT TERM
cd -- "$work"

m68k-linux-gnu-as --fatal-warnings -o lantern.o "$here/src/lantern.s"
m68k-linux-gnu-objcopy -O binary -j .text lantern.o lantern.bin

cp -- lantern.bin "$out/"

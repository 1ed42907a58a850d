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
shared=$here/shared
[ -d "$shared" ] || shared=$here/../lantern-tide-sg1000/shared

for tool in sdasz80 sdldz80; do
    if ! command -v "$tool" >/dev/null 2>&1; then
        echo "rebuild.sh: $tool is missing; install the package sdcc" >&2
        exit 3
    fi
done

mkdir -p -- "$out"
out=$(CDPATH='' cd -- "$out" && pwd)
work=$(mktemp -d)
trap 'rm -rf -- "$work"' EXIT
trap 'exit 1' HUP INT TERM
cd -- "$work"

sdasz80 -I"$here/src" -o lantern.rel "$here/src/lantern.s"
# The picture is the same on all consoles with this video chip.
sdasz80 -I"$here/src" -o picture.rel "$shared/picture.s"
sdldz80 -n -i -b _CODE=0x8080 lantern.ihx lantern.rel picture.rel

cp -- lantern.ihx "$out/"

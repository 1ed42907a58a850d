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
[ -d "$shared" ] || shared=$here/../lantern-tide-a5200/shared

for tool in ca65 ld65; do
    if ! command -v "$tool" >/dev/null 2>&1; then
        echo "rebuild.sh: $tool is missing; install the package cc65" >&2
        exit 3
    fi
done

mkdir -p -- "$out"
out=$(CDPATH='' cd -- "$out" && pwd)
work=$(mktemp -d)
trap 'rm -rf -- "$work"' EXIT
trap 'exit 1' HUP INT TERM
cd -- "$work"

ca65 -I "$here/src" -o lantern.o "$here/src/lantern.s"
ca65 -I "$here/src" -o picture.o "$shared/picture.s"
ld65 -C "$here/src/lantern.cfg" lantern.o picture.o

cp -- lantern.bin "$out/"

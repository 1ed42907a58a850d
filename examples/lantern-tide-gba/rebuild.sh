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

for tool in arm-none-eabi-as arm-none-eabi-ld; do
    if ! command -v "$tool" >/dev/null 2>&1; then
        echo "rebuild.sh: $tool is missing; install the package binutils-arm-none-eabi" >&2
        exit 3
    fi
done

mkdir -p -- "$out"
out=$(CDPATH='' cd -- "$out" && pwd)
work=$(mktemp -d)
trap 'rm -rf -- "$work"' EXIT
trap 'exit 1' HUP INT TERM
cd -- "$work"

arm-none-eabi-as -mcpu=arm7tdmi --fatal-warnings -I "$here/src" -o lantern.o "$here/src/lantern.s"
# -n: no page alignment, so that the ELF header stays out of every segment.
arm-none-eabi-ld -n --strip-all --build-id=none -T "$here/src/lantern.ld" -o lantern.elf lantern.o
chmod 644 lantern.elf       # it is no program for this machine

cp -- lantern.elf "$out/"

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

for tool in mips-linux-gnu-as mips-linux-gnu-ld mips-linux-gnu-objcopy; do
    if ! command -v "$tool" >/dev/null 2>&1; then
        echo "rebuild.sh: $tool is missing; install the package binutils-mips-linux-gnu" >&2
        exit 3
    fi
done

mkdir -p -- "$out"
out=$(CDPATH='' cd -- "$out" && pwd)
work=$(mktemp -d)
trap 'rm -rf -- "$work"' EXIT
trap 'exit 1' HUP INT TERM
cd -- "$work"

for part in boot lantern; do
    mips-linux-gnu-as -EB -march=vr4300 -mabi=32 -G0 --fatal-warnings \
        -I "$here/src" -o "$part.o" "$here/src/$part.s"
done
# Both are linked for where they run, not for where they lie in the ROM.
mips-linux-gnu-ld -EB -G0 --build-id=none -Ttext=0xA4000040 -e start -T "$here/src/flat.ld" -o boot.elf boot.o
mips-linux-gnu-ld -EB -G0 --build-id=none -Ttext=0xA0000400 -e start -T "$here/src/flat.ld" -o lantern.elf lantern.o
for part in boot lantern; do
    mips-linux-gnu-objcopy -O binary "$part.elf" "$part.bin"
    chmod 644 "$part.bin"       # it is no program for this machine
done

cp -- boot.bin lantern.bin "$out/"

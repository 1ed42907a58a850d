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

need() {
    if ! command -v "$1" >/dev/null 2>&1; then
        echo "rebuild.sh: $1 is missing; install the package $2" >&2
        exit 3
    fi
}
need m68k-linux-gnu-as binutils-m68k-linux-gnu
need m68k-linux-gnu-ld binutils-m68k-linux-gnu
need sh-elf-as binutils-sh-elf
need sh-elf-objcopy binutils-sh-elf

mkdir -p -- "$out"
out=$(CDPATH='' cd -- "$out" && pwd)
work=$(mktemp -d)
trap 'rm -rf -- "$work"' EXIT
trap 'exit 1' HUP INT TERM
cd -- "$work"

# All jumps of the SH-2 program are relative, so it needs no linker.
sh-elf-as -big --isa=sh2 --fatal-warnings -o sh2.o "$here/src/sh2.s"
sh-elf-objcopy -O binary -j .text sh2.o sh2.bin
m68k-linux-gnu-as -m68000 --register-prefix-optional --fatal-warnings -o lantern.o "$here/src/lantern.s"
# -n: no page alignment, so that the ELF header stays out of every segment.
m68k-linux-gnu-ld -n --strip-all --build-id=none --fatal-warnings -T "$here/src/lantern.ld" -o lantern.elf lantern.o
chmod 644 lantern.elf       # it is no program for this machine

cp -- lantern.elf "$out/"

#!/bin/sh
# Assembles the programs of all Lantern Tide carts.
#
#   ./rebuild.sh [OUTDIR]       without OUTDIR each cart's own out/ is filled;
#                               with it, OUTDIR/lantern-tide-nes and so on
#
# Exit status: 0 all built, 3 an assembler is missing, else the assembler's own.
set -eu

here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)

for folder in "$here"/lantern-tide-*/; do
    cart=$(basename -- "$folder")
    echo "$cart"
    if [ $# -gt 0 ]; then
        "$here/$cart/rebuild.sh" "$1/$cart"
    else
        "$here/$cart/rebuild.sh"
    fi
done

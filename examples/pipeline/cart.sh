#!/bin/sh
# Builds a cart as a build service does.
#
#   ./cart.sh [CART [OUTDIR]]   CART: default the Game Boy cart beside this folder
#                               OUTDIR: default dist/ beside this script
#
# OUTDIR/cart gets the files of the cart, OUTDIR/SHA256SUMS their digests,
# OUTDIR/findings.sarif what is to be shown beside the lines of a change.
# CARTWRIGHT names the command, default cartwright.
# Exit status: that of the build; 4 when a second build gave other bytes.
set -eu

here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
cart=${1:-$here/../lantern-tide-gb}
out=${2:-$here/dist}

mkdir -p -- "$out"
out=$(CDPATH='' cd -- "$out" && pwd)
work=$(mktemp -d)
trap 'rm -rf -- "$work"' EXIT
trap 'exit 1' HUP INT TERM

${CARTWRIGHT:-cartwright} build "$cart" --out "$out/cart" --sarif "$out/findings.sarif"
(cd -- "$out/cart" && sha256sum -- *) > "$out/SHA256SUMS"

${CARTWRIGHT:-cartwright} build "$cart" --out "$work/cart" > "$work/log"
if ! (cd -- "$work/cart" && sha256sum --check --strict --quiet "$out/SHA256SUMS"); then
    echo "cart.sh: a second build gave other bytes" >&2
    exit 4
fi

# A boot code for loaders that have set up the console themselves: it copies the
# program to its entry address and starts it. The console's own check refuses it,
# and it does not wake up the RAM, so it is nothing for a cartridge.
#
# The boot code runs in 4 KiB of memory inside the picture processor, from
# 0xA4000040 on.

        .include "hardware.inc"

        .equ    BYTES, 0x2000                   # enough for this program

        .text
        .globl  start
start:
        li      $t0, PROGRAM
        li      $t1, ENTRY
        lw      $t1, 0($t1)
        move    $t2, $t1
        li      $t3, BYTES
1:      lw      $t4, 0($t0)
        sw      $t4, 0($t2)
        addiu   $t0, $t0, 4
        addiu   $t2, $t2, 4
        addiu   $t3, $t3, -4
        bnez    $t3, 1b
        jr      $t1

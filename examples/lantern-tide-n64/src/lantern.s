# Lantern Tide for the Nintendo 64: a title over a night sea, and a lantern that
# left and right carry along and that A or START lights.
#
# The program runs at 0xA0000400, past the cache: slow, but there is no cache to
# set up, and every pixel written is in RAM at once.

        .include "hardware.inc"

        .equ    SKY,     0x0853                 # red, green, blue of five bits each, and a one
        .equ    SEA,     0x11D5
        .equ    FOAM,    0xA739
        .equ    INK,     0xFFFF
        .equ    DIM,     0x6319                 # lantern out
        .equ    LIT,     0xFFC1                 # lantern lit: yellow

        .equ    HORIZON, 168
        .equ    LAMP_Y,  144
        .equ    LAMP_W,  12
        .equ    LAMP_H,  24
        .equ    LAMP_LEFT, 16
        .equ    LAMP_RIGHT, WIDTH - 16 - LAMP_W

# Registers that keep their meaning throughout:
#   s0 first pixel of the picture   s1 video registers   s2 lantern's left edge   s3 serial registers

        .text
        .globl  start
start:
        li      $sp, STACK
        li      $s0, PICTURE
        li      $s1, VIDEO
        li      $s2, 154
        li      $s3, SERIAL
        li      $t0, LOCK_STATE
        li      $t1, 8
        sw      $t1, 0($t0)                     # without it the console stops after some seconds
        jal     draw_scene
        jal     start_video

frame:
        jal     wait_for_blank
        li      $a3, SKY
        jal     draw_lamp                       # away with the old one
        jal     read_pad
        andi    $t0, $v0, KEY_LEFT
        beqz    $t0, 1f
        addiu   $s2, $s2, -1
1:      andi    $t0, $v0, KEY_RIGHT
        beqz    $t0, 2f
        addiu   $s2, $s2, 1
2:      slti    $t0, $s2, LAMP_LEFT
        beqz    $t0, 3f
        li      $s2, LAMP_LEFT
3:      slti    $t0, $s2, LAMP_RIGHT + 1
        bnez    $t0, 4f
        li      $s2, LAMP_RIGHT
4:      li      $a3, DIM
        andi    $t0, $v0, KEY_A | KEY_START
        beqz    $t0, 5f
        li      $a3, LIT
5:      jal     draw_lamp
        b       frame

# Waits for the next vertical blank: first until the last one is over, so that a
# short frame is not counted twice.
wait_for_blank:
1:      lw      $t0, LINE($s1)
        sltiu   $t1, $t0, LAST_LINE
        beqz    $t1, 1b
2:      lw      $t0, LINE($s1)
        sltiu   $t1, $t0, LAST_LINE
        bnez    $t1, 2b
        jr      $ra

# The buttons of the first controller in v0.
read_pad:
        li      $t0, BLOCK
        li      $t1, 0xFF010401                 # filler; send 1 byte, expect 4; "buttons, please"
        sw      $t1, 0($t0)
        li      $t1, -1
        sw      $t1, 4($t0)                     # room for the answer
        li      $t1, 0xFE000000                 # no further controllers
        sw      $t1, 8($t0)
        addiu   $t2, $t0, 12
        addiu   $t3, $t0, 60
1:      sw      $zero, 0($t2)
        addiu   $t2, $t2, 4
        bne     $t2, $t3, 1b
        li      $t1, 1                          # run the block
        sw      $t1, 0($t3)
        li      $t4, LOCK_RAM
        li      $t5, BLOCK & 0x1FFFFFFF
        sw      $t5, SERIAL_RAM($s3)
        sw      $t4, SERIAL_WRITE($s3)
2:      lw      $t1, SERIAL_STATE($s3)
        andi    $t1, $t1, 3
        bnez    $t1, 2b
        sw      $t5, SERIAL_RAM($s3)
        sw      $t4, SERIAL_READ($s3)
3:      lw      $t1, SERIAL_STATE($s3)
        andi    $t1, $t1, 3
        bnez    $t1, 3b
        lbu     $t1, 2($t0)
        lhu     $v0, 4($t0)
        andi    $t1, $t1, 0xC0                  # nobody answered
        beqz    $t1, 4f
        move    $v0, $zero
4:      jr      $ra

# The picture of 320 by 240 half-words, for NTSC.
start_video:
        la      $t0, video_values
        addiu   $t1, $t0, video_end - video_values
        move    $t2, $s1
1:      lw      $t3, 0($t0)
        sw      $t3, 0($t2)
        addiu   $t0, $t0, 4
        addiu   $t2, $t2, 4
        bne     $t0, $t1, 1b
        jr      $ra

# Fills the lantern's rectangle with colour a3.
draw_lamp:
        move    $a0, $s2
        li      $a1, LAMP_Y
        li      $a2, LAMP_H
        li      $v1, LAMP_W
        b       fill

# Fills v1 by a2 pixels from column a0, line a1 with colour a3.
fill:
        li      $t0, 2 * WIDTH
        mult    $a1, $t0
        mflo    $t1
        addu    $t1, $t1, $s0
        sll     $t2, $a0, 1
        addu    $t1, $t1, $t2
1:      move    $t2, $v1
        move    $t3, $t1
2:      sh      $a3, 0($t3)
        addiu   $t3, $t3, 2
        addiu   $t2, $t2, -1
        bnez    $t2, 2b
        addu    $t1, $t1, $t0
        addiu   $a2, $a2, -1
        bnez    $a2, 1b
        jr      $ra

        .macro  rectangle line, height, colour
        li      $a0, 0
        li      $a1, \line
        li      $a2, \height
        li      $v1, WIDTH
        li      $a3, \colour
        jal     fill
        .endm

# Sky, sea with a line of foam, title.
draw_scene:
        addiu   $sp, $sp, -8
        sw      $ra, 0($sp)
        rectangle 0, HORIZON, SKY
        rectangle HORIZON, HEIGHT - HORIZON, SEA
        rectangle HORIZON, 2, FOAM
        jal     draw_title
        lw      $ra, 0($sp)
        addiu   $sp, $sp, 8
        jr      $ra

# Each letter is eight bytes, a bit a pixel, the leftmost in bit 7; pixels are drawn two by two.
draw_title:
        addiu   $sp, $sp, -8
        sw      $ra, 0($sp)
        la      $t4, title
        li      $t5, 64                         # column
next_letter:
        lbu     $t6, 0($t4)
        addiu   $t4, $t4, 1
        li      $t7, 0xFF
        beq     $t6, $t7, title_done
        sll     $t6, $t6, 3
        la      $t7, glyphs
        addu    $t6, $t6, $t7
        li      $a1, 48                         # line
next_row:
        lbu     $t7, 0($t6)
        addiu   $t6, $t6, 1
        move    $a0, $t5
next_pixel:
        andi    $t8, $t7, 0x80
        beqz    $t8, 1f
        li      $a2, 2
        li      $v1, 2
        li      $a3, INK
        jal     fill
1:      addiu   $a0, $a0, 2
        sll     $t7, $t7, 1
        andi    $t7, $t7, 0xFF
        bnez    $t7, next_pixel
        addiu   $a1, $a1, 2
        li      $t8, 48 + 16
        bne     $a1, $t8, next_row
        addiu   $t5, $t5, 16
        b       next_letter
title_done:
        lw      $ra, 0($sp)
        addiu   $sp, $sp, 8
        jr      $ra

        .section .rodata
        .balign 4
# In order of the registers, from the first.
video_values:
        .word   0x0000320E                      # 16-bit pixels, smoothed
        .word   PICTURE & 0x1FFFFFFF
        .word   WIDTH
        .word   0x00000200                      # interrupt line; none is used
        .word   0x00000000                      # current line
        .word   0x03E52239                      # burst
        .word   0x0000020D                      # half-lines of a field, less one
        .word   0x00000C15                      # length of a line
        .word   0x0C150C15
        .word   0x006C02EC                      # first and last column
        .word   0x002501FF                      # first and last half-line
        .word   0x000E0204                      # burst lines
        .word   0x00000200                      # half as wide as the screen
        .word   0x00000400                      # and as high as a field
video_end:

        .include "letters.inc"

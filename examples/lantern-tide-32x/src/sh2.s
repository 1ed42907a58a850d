! LANTERN TIDE for the 32X: the part of the SH-2 processors.
!
! The master draws: sky, sea, and a lantern that left and right carry along and
! that the B button lights. The slave has nothing to do. Copied to 0x06000000,
! with both processors' vectors in front. Registers are from memory.

        .equ    LINES, 224
        .equ    WORDS, 160              ! of a line: two pixels each
        .equ    TABLE, 0x100            ! words that tell where each line begins
        .equ    HORIZON, 168
        .equ    LAMP_TOP, 144
        .equ    LAMP_LINES, 24
        .equ    LAMP_WORDS, 6

        .equ    KEY_LEFT, 0x04
        .equ    KEY_RIGHT, 0x08
        .equ    KEY_B, 0x10

        .text
        .rept   2                       ! master, slave
        .rept   72
        .long   0x06000248              ! nothing is expected: wait forever
        .endr
        .endr

! 0x240: both starts, four bytes each
        bra     master
        nop
        bra     idle
        nop
idle:
        bra     idle
        nop

! r8 frame buffer   r9 lantern, words from the left   r10 picture registers   r11 exchange registers
master:
        mov.l   stack, r15
        mov.l   exchange, r11
1:      mov.l   @r11, r0                ! the 68000 clears it
        tst     r0, r0
        bf      1b

        mov.l   adapter, r1
        mov     #0x80, r0
        mov.b   r0, @r1                 ! the picture is ours
        mov.l   buffer, r8
        mov     #77, r9
        mov.l   picture, r10
        mov     #1, r0
        mov.w   r0, @r10                ! a byte a pixel

        mov.l   colours, r1             ! 0 unused, sky, sea, lantern out, lantern lit
        mova    palette, r0
        mov     #5, r2
2:      mov.w   @r0+, r3
        mov.w   r3, @r1
        add     #2, r1
        dt      r2
        bf      2b

frame:
        bsr     move
        nop
        bsr     draw
        nop
        mov.w   @(0x0A, r10), r0        ! the other half of the frame buffer, from the next blank on
        mov     r0, r1
        mov     #1, r2
        xor     r2, r1
        and     r2, r1
        mov     r1, r0
        mov.w   r0, @(0x0A, r10)
3:      mov.w   @(0x0A, r10), r0
        and     #1, r0
        cmp/eq  r0, r1
        bf      3b
        bra     frame
        nop

! The pad moves the lantern.
move:
        mov.w   @(0x0C, r11), r0
        mov     r0, r7
        tst     #KEY_LEFT, r0
        bt      1f
        cmp/pl  r9
        bf      1f
        add     #-1, r9
1:      tst     #KEY_RIGHT, r0
        bt      2f
        mov.w   rightmost, r1
        cmp/ge  r1, r9
        bt      2f
        add     #1, r9
2:      rts
        nop

! The whole picture, pad in r7.
draw:
        mov     r8, r4                  ! where each line begins
        mov.w   table, r5
        mov.w   lines, r6
        mov.w   words, r3
1:      mov.w   r5, @r4
        add     r3, r5
        add     #2, r4
        dt      r6
        bf      1b

        mov.w   first, r4
        add     r8, r4
        mov.w   sky_words, r5
        mov.w   sky, r0
2:      mov.w   r0, @r4
        add     #2, r4
        dt      r5
        bf      2b
        mov.w   sea_words, r5
        mov.w   sea, r0
3:      mov.w   r0, @r4
        add     #2, r4
        dt      r5
        bf      3b

        mov.l   lamp_at, r4
        add     r8, r4
        mov     r9, r0
        add     r0, r0
        add     r0, r4
        mov.w   out, r0
        mov     #KEY_B, r1
        tst     r1, r7
        bt      4f
        mov.w   lit, r0
4:      mov     #LAMP_LINES, r5
        mov.w   rest, r2
5:      mov     #LAMP_WORDS, r6
6:      mov.w   r0, @r4
        add     #2, r4
        dt      r6
        bf      6b
        add     r2, r4
        dt      r5
        bf      5b
        rts
        nop

        .align  2
stack:          .long   0x06040000
exchange:       .long   0x20004020
adapter:        .long   0x20004000
picture:        .long   0x20004100
colours:        .long   0x20004200
buffer:         .long   0x24000000
lamp_at:        .long   2 * (TABLE + LAMP_TOP * WORDS)
palette:        .word   0x0000, 0x2842, 0x51C4, 0x318C, 0x03FF   ! blue, green, red of five bits
table:          .word   TABLE
lines:          .word   LINES
words:          .word   WORDS
first:          .word   2 * TABLE
sky_words:      .word   HORIZON * WORDS
sea_words:      .word   (LINES - HORIZON) * WORDS
rightmost:      .word   WORDS - LAMP_WORDS
rest:           .word   2 * (WORDS - LAMP_WORDS)
sky:            .word   0x0101
sea:            .word   0x0202
out:            .word   0x0303
lit:            .word   0x0404

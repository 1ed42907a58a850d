@ Lantern Tide for the Game Boy Advance: a title over a night sea, and a lantern
@ that left and right carry along and that A or START lights.
@
@ Bitmap mode 3 is used because a newcomer can see what is drawn: every pixel is
@ one half-word, 240 to a line.

        .include "hardware.inc"

        .equ    SKY,     0x2442         @ dark blue
        .equ    SEA,     0x5508
        .equ    FOAM,    0x7F94
        .equ    INK,     0x7FFF         @ white
        .equ    DIM,     0x194C         @ lantern out
        .equ    LIT,     0x03FF         @ lantern lit: yellow

        .equ    HORIZON, 110
        .equ    LAMP_Y,  86
        .equ    LAMP_W,  12
        .equ    LAMP_H,  24
        .equ    LAMP_LEFT, 8
        .equ    LAMP_RIGHT, WIDTH - 8 - LAMP_W

@ Registers that keep their meaning throughout:
@   r8 first pixel of the picture    r9 registers    r10 lantern's left edge    r11 its colour

        .section .text
        .arm
        .global start
start:
        ldr     sp, =STACK
        ldr     r9, =REGISTERS
        mov     r0, #0
        ldr     r1, =INTERRUPTS
        strh    r0, [r9, r1]            @ nothing but this loop runs
        ldr     r8, =PICTURE
        bl      draw_scene
        ldr     r0, =MODE3
        strh    r0, [r9, #DISPLAY]      @ shown once it is whole
        mov     r10, #114
        ldr     r11, =DIM

frame:
        bl      wait_for_blank
        ldr     r3, =SKY
        bl      draw_lamp               @ away with the old one
        ldr     r1, =KEYS
        ldrh    r1, [r9, r1]            @ a key that is held reads 0
        tst     r1, #KEY_LEFT
        subeq   r10, r10, #1
        tst     r1, #KEY_RIGHT
        addeq   r10, r10, #1
        cmp     r10, #LAMP_LEFT
        movlt   r10, #LAMP_LEFT
        cmp     r10, #LAMP_RIGHT
        movgt   r10, #LAMP_RIGHT
        ldr     r11, =LIT
        and     r1, r1, #(KEY_A | KEY_START)
        cmp     r1, #(KEY_A | KEY_START)
        ldreq   r11, =DIM               @ neither is held
        mov     r3, r11
        bl      draw_lamp
        b       frame

@ Waits for the next vertical blank: first until the last one is over, so that a
@ short frame is not counted twice.
wait_for_blank:
1:      ldrh    r0, [r9, #LINE]
        cmp     r0, #HEIGHT
        beq     1b
2:      ldrh    r0, [r9, #LINE]
        cmp     r0, #HEIGHT
        bne     2b
        bx      lr

@ Fills the lantern's rectangle with colour r3.
draw_lamp:
        push    {lr}
        mov     r0, r10
        mov     r1, #LAMP_Y
        mov     r2, #LAMP_H
        mov     r4, #LAMP_W
        bl      fill
        pop     {lr}
        bx      lr

@ Fills r4 by r2 pixels from column r0, line r1 with colour r3.
fill:
        mov     r5, #(2 * WIDTH)
        mul     r6, r1, r5
        add     r6, r6, r8
        add     r6, r6, r0, lsl #1
1:      mov     r7, r4
        mov     r12, r6
2:      strh    r3, [r12], #2
        subs    r7, r7, #1
        bne     2b
        add     r6, r6, r5
        subs    r2, r2, #1
        bne     1b
        bx      lr

@ Sky, sea with a line of foam, title.
draw_scene:
        push    {lr}
        mov     r0, #0
        mov     r1, #0
        mov     r2, #HORIZON
        mov     r4, #WIDTH
        ldr     r3, =SKY
        bl      fill
        mov     r0, #0
        mov     r1, #HORIZON
        mov     r2, #(HEIGHT - HORIZON)
        mov     r4, #WIDTH
        ldr     r3, =SEA
        bl      fill
        mov     r0, #0
        mov     r1, #HORIZON
        mov     r2, #1
        mov     r4, #WIDTH
        ldr     r3, =FOAM
        bl      fill
        bl      draw_title
        pop     {lr}
        bx      lr

@ Each letter is eight bytes, a bit a pixel, the leftmost in bit 7; pixels are drawn two by two.
draw_title:
        push    {r9, r10, r11, lr}      @ borrowed here
        ldr     r9, =title
        mov     r10, #24                @ column
next_letter:
        ldrb    r0, [r9], #1
        cmp     r0, #0xFF
        beq     title_done
        ldr     r11, =glyphs
        add     r11, r11, r0, lsl #3
        mov     r1, #32                 @ line
next_row:
        ldrb    r12, [r11], #1
        mov     r0, r10
next_pixel:
        tst     r12, #0x80
        beq     3f
        push    {r0, r1, r12}
        mov     r2, #2
        mov     r4, #2
        ldr     r3, =INK
        bl      fill
        pop     {r0, r1, r12}
3:      add     r0, r0, #2
        mov     r12, r12, lsl #1
        ands    r12, r12, #0xFF
        bne     next_pixel
        add     r1, r1, #2
        cmp     r1, #(32 + 16)
        bne     next_row
        add     r10, r10, #16
        b       next_letter
title_done:
        pop     {r9, r10, r11, lr}
        bx      lr

        .ltorg

        .section .rodata
        .include "letters.inc"

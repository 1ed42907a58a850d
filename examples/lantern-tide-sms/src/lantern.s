; Lantern Tide for the Master System: the title over a sky that brightens while
; button 1 is held.

        .module lantern
        .include "hardware.inc"

BORDER  = 16                    ; the first colour of the second half
STACK   = 0xDFF0                ; below the copies of the mapper's registers
TITLE_ROW    = 8
TITLE_COLUMN = 10

        .area   LANTERN (ABS)

        .org    0x0000
        di
        im      1
        ld      sp, #STACK
        jp      start

        .org    0x0038          ; interrupts stay off; one that comes all the same is over at once
        ei
        reti

        .org    0x0066          ; the pause key
        retn

; Texts of the author tag; the manifest names their addresses.
        .org    0x0080
        .asciz  "Quillmoor Softworks"
        .org    0x00A0
        .asciz  "Lantern Tide"

        .org    0x0100
start:
        call    wait_for_blank
        ld      hl, #registers
        ld      b, #(registers_end - registers)
        ld      c, #VDP_CONTROL
        otir                    ; picture off until it is whole
        call    clear_video_memory
        call    load_letters
        call    write_title
        ld      hl, #colours
        ld      a, #0
        call    set_colours
        ld      a, #PICTURE_ON
        out     (VDP_CONTROL), a
        ld      a, #(REGISTER | 1)
        out     (VDP_CONTROL), a

; The sky changes with the button, written in the vertical blank.
frame:
        call    wait_for_blank
        ld      hl, #night
        in      a, (PAD)        ; a key that is held reads 0
        and     #BUTTON_1
        jr      nz, show
        ld      hl, #dawn
show:
        ld      a, #0
        ld      b, #1
        call    write_colours
        dec     hl              ; the border like the sky
        ld      a, #BORDER
        ld      b, #1
        call    write_colours
        jr      frame

; Waits until the beam has left the picture, and for the next time it does.
wait_for_blank:
        in      a, (LINE)
        cp      #HEIGHT
        jr      z, wait_for_blank
1$:     in      a, (LINE)
        cp      #HEIGHT
        jr      nz, 1$
        ret

; All 16 KiB to zero.
clear_video_memory:
        ld      hl, #WRITE_VIDEO
        call    set_address
        ld      bc, #0x4000
1$:     xor     a
        out     (VDP_DATA), a
        dec     bc
        ld      a, b
        or      c
        jr      nz, 1$
        ret

; A letter is eight rows of one bit a pixel; the picture wants four bits: only the first is used.
load_letters:
        ld      hl, #WRITE_VIDEO
        call    set_address
        ld      hl, #letters
        ld      de, #(letters_end - letters)
1$:     ld      a, (hl)
        out     (VDP_DATA), a
        xor     a
        out     (VDP_DATA), a
        nop
        out     (VDP_DATA), a
        nop
        out     (VDP_DATA), a
        inc     hl
        dec     de
        ld      a, d
        or      e
        jr      nz, 1$
        ret

; Two bytes a place on the screen: the tile's number, and its attributes.
write_title:
        ld      hl, #(WRITE_VIDEO + NAME_TABLE + 2 * (32 * TITLE_ROW + TITLE_COLUMN))
        call    set_address
        ld      hl, #title
        ld      b, #(title_end - title)
1$:     ld      a, (hl)
        out     (VDP_DATA), a
        inc     hl
        xor     a
        out     (VDP_DATA), a
        djnz    1$
        ret

; Colours from hl on, beginning with number a.
set_colours:
        ld      b, #(colours_end - colours)
write_colours:
        out     (VDP_CONTROL), a
        ld      a, #COLOUR_MEMORY
        out     (VDP_CONTROL), a
        ld      c, #VDP_DATA
        otir
        ret

set_address:
        ld      a, l
        out     (VDP_CONTROL), a
        ld      a, h
        out     (VDP_CONTROL), a
        ret

; Values and numbers of the video chip's registers.
registers:
        .db     0x06, REGISTER | 0      ; the console's own mode
        .db     0x80, REGISTER | 1      ; picture off, no interrupt
        .db     0xFF, REGISTER | 2      ; name table at 0x3800
        .db     0xFF, REGISTER | 3
        .db     0xFF, REGISTER | 4
        .db     0xFF, REGISTER | 5      ; sprite table at 0x3F00
        .db     0xFB, REGISTER | 6      ; sprite tiles at 0x0000
        .db     0x00, REGISTER | 7      ; border in colour 0 of the second half
        .db     0x00, REGISTER | 8      ; not scrolled
        .db     0x00, REGISTER | 9
        .db     0xFF, REGISTER | 10     ; no line interrupt
registers_end:

; Two bits each of blue, green, red.
night:
colours:
        .db     0x10, 0x3F              ; sky, letters
colours_end:
dawn:
        .db     0x35

        .include "letters.inc"

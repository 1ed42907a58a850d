# Lantern Tide for the WonderSwan: the smallest program that shows something. The
# screen is dark; while A is held it is light.

        .intel_syntax noprefix
        .code16

        .equ    DISPLAY,    0x00        # which layers are shown
        .equ    BACKDROP,   0x01        # shade where no layer is
        .equ    LINE,       0x02        # line that is drawn
        .equ    SHADES,     0x1C        # eight shades, two to a byte
        .equ    KEYS,       0xB5

        .equ    BLANK_LINE, 144         # first line below the picture
        .equ    BUTTONS,    0x40        # written to KEYS: look at the buttons
        .equ    BUTTON_A,   0x04

        .equ    LIGHT,      0           # numbers of shades
        .equ    DARK,       7

        .global start
start:
        cli
        cld
        xor     ax, ax
        mov     ss, ax
        mov     sp, 0x2000              # internal RAM, 16 KiB at least
        out     DISPLAY, al             # no layer: the backdrop is all there is
        mov     al, 0x20                # shades from light to dark
        out     SHADES, al
        mov     al, 0x64
        out     SHADES + 1, al
        mov     al, 0xA8
        out     SHADES + 2, al
        mov     al, 0xFC
        out     SHADES + 3, al

frame:
        call    wait_for_blank
        mov     al, BUTTONS
        out     KEYS, al
        nop                             # the lines take a moment to settle
        nop
        in      al, KEYS
        test    al, BUTTON_A
        mov     al, DARK
        jz      show
        mov     al, LIGHT
show:
        out     BACKDROP, al
        jmp     frame

# Waits until the picture is over, and for the next time it is.
wait_for_blank:
        in      al, LINE
        cmp     al, BLANK_LINE
        je      wait_for_blank
1:      in      al, LINE
        cmp     al, BLANK_LINE
        jne     1b
        ret

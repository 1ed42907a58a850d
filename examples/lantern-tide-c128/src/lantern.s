; LANTERN TIDE for the Commodore 128, by Quillmoor Softworks, 2026.
;
; A function ROM of 16 KiB at $8000. BASIC calls it after its message, with the
; machine set up and its own ROM above $C000; the picture is that of the screen
; with 40 columns.

        .import play

.segment "HEADER"               ; $8000

        .byte $FF               ; the jumps, the identifier and CBM are written
        .addr start             ; when the cart is built; the addresses are here
        .byte $FF
        .addr start
        .res 4, $FF

.segment "CODE"

start:
        sei                     ; no interrupt is needed
        cld
        ldx #$FF
        txs
        jmp play

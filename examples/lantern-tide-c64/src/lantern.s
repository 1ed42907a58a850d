; LANTERN TIDE for the Commodore 64, by Quillmoor Softworks, 2026.
;
; The title over a night sea, and a lantern that bobs on the tide: this file is
; the start of the machine. 16 KiB: the program in ROML at $8000, the picture's
; data in ROMH at $A000, where BASIC would be.

        .import play

; --- entries of the KERNAL ---
CINT   = $FF81                  ; screen
IOINIT = $FF84                  ; interface chips
RAMTAS = $FF87                  ; clears and measures RAM
RESTOR = $FF8A                  ; vectors

.segment "HEADER"               ; $8000

        .addr start             ; power-on
        .addr start             ; RESTORE key
        .res 5, $FF             ; CBM80: written when the cart is built

.segment "CODE"

; The KERNAL has done nothing yet but to look for the cartridge.
start:
        sei
        cld
        ldx #$FF
        txs
        jsr IOINIT
        jsr RAMTAS
        jsr RESTOR
        jsr CINT
        sei                     ; no interrupt is needed from here on
        jmp play

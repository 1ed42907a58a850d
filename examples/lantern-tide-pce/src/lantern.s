; LANTERN TIDE for the PC Engine, by Quillmoor Softworks, 2026.
;
; The title over a night sky; while button I is held, day breaks.

        .setcpu "huc6280"
        .include "hardware.inc"

TILES        = $1000            ; in picture memory, words: behind the screen
TILE         = TILES / 16
SCREEN_WORDS = 32 * 32
TITLE_PLACE  = 12 * 32 + 10
LAST_GLOW    = 7

.segment "ZEROPAGE"

glow:   .res 1                  ; how bright the sky is, 0 to 7
count:  .res 1

.segment "CODE"

; ---------------------------------------------------------------- power on

reset:
        sei
        csh                     ; full speed
        cld
        lda #BANK_IO
        tam #MAP_0
        lda #BANK_RAM
        tam #MAP_1              ; page zero and stack lie at $2000
        ldx #$FF
        txs
        lda #%111
        sta IRQ_MASK            ; no interrupts: the program looks at the flag itself
        stz TIMER
        stz PSG_VOLUME
        stz VCE_CONTROL         ; 256 dots in a line
        stz glow

        jsr set_up_picture
        jsr load_tiles
        jsr clear_screen
        jsr write_title

        lda #1                  ; the letters' colour; the sky's follows in every frame
        sta VCE_ADDRESS
        stz VCE_ADDRESS + 1
        lda #<$01FF
        sta VCE_COLOR
        lda #>$01FF
        sta VCE_COLOR + 1
        stz VCE_ADDRESS
        sta VCE_ADDRESS + 1     ; the border's, $0100, stays black
        stz VCE_COLOR
        stz VCE_COLOR + 1
        st0 #VDC_CONTROL
        st1 #%10001000          ; background on, and a flag at the end of the picture
        st2 #0

; --------------------------------------------------------------- main loop

frame:
        jsr wait_for_blank
        jsr show_sky
        jsr read_pad            ; zero = held
        beq @brighter
        lda glow
        beq frame
        dec glow
        bra frame
@brighter:
        lda glow
        cmp #LAST_GLOW
        beq frame
        inc glow
        bra frame

wait_for_blank:
        lda a:VDC_STATUS        ; what is left from before
@wait:
        lda a:VDC_STATUS
        and #IN_BLANK
        beq @wait
        rts

show_sky:
        stz VCE_ADDRESS
        stz VCE_ADDRESS + 1
        lda glow
        asl a
        tax
        lda sky,x
        sta VCE_COLOR
        lda sky + 1,x
        sta VCE_COLOR + 1
        rts

read_pad:
        lda #PAD_SELECT
        sta PAD
        lda #PAD_SELECT | PAD_CLEAR
        sta PAD
        lda #PAD_SELECT
        sta PAD
        jsr settle
        stz PAD                 ; buttons
        jsr settle
        lda PAD
        and #BUTTON_I
        rts

settle:                         ; the lines take a moment
        nop
        nop
        rts

; ----------------------------------------------------------------- picture

set_up_picture:
        clx
@next:
        lda setup,x
        bmi @done
        sta a:VDC_STATUS        ; writing selects a register
        lda setup + 1,x
        sta a:VDC_LOW
        lda setup + 2,x
        sta a:VDC_HIGH
        inx
        inx
        inx
        bra @next
@done:
        rts

; A letter has one colour: eight lines of it in the low bytes of eight words, and
; eight words more for colours it has not.
load_tiles:
        st0 #VDC_ADDRESS
        st1 #<TILES
        st2 #>TILES
        st0 #VDC_DATA
        clx
@letter:
        lda #8
        sta count
@line:
        lda letters,x
        sta a:VDC_LOW
        st2 #0
        inx
        dec count
        bne @line
        lda #8
        sta count
@rest:
        st1 #0
        st2 #0
        dec count
        bne @rest
        cpx #letters_end - letters
        bne @letter
        rts

clear_screen:
        st0 #VDC_ADDRESS
        st1 #0
        st2 #0
        st0 #VDC_DATA
        ldy #>SCREEN_WORDS
        clx
@next:
        st1 #<TILE              ; the blank one
        st2 #>TILE
        dex
        bne @next
        dey
        bne @next
        rts

write_title:
        st0 #VDC_ADDRESS
        st1 #<TITLE_PLACE
        st2 #>TITLE_PLACE
        st0 #VDC_DATA
        clx
@next:
        lda title,x             ; TILE is a whole number of pages
        sta a:VDC_LOW
        st2 #>TILE
        inx
        cpx #title_end - title
        bne @next
        rts

unused:                         ; an interrupt that comes all the same
        rti

.segment "RODATA"

; Register, and its word, of the picture unit: 256 by 224 dots, a screen of 32 by 32
; tiles, nothing shown yet.
setup:
        .byte VDC_CONTROL
        .word 0
        .byte $07, 0, 0         ; left edge
        .byte $08, 0, 0         ; top edge
        .byte $09, 0, 0         ; size of the screen
        .byte $0A, $02, $02     ; times of a line
        .byte $0B, $1F, $03
        .byte $0C, $02, $17     ; times of a picture
        .byte $0D, $DF, $00
        .byte $0E, $0C, $00
        .byte $0F, 0, 0         ; no copying
        .byte $FF

sky:    .word $0001, $0002, $000A, $004B, $008C, $00CD, $010E, $0157

        .include "letters.inc"

.segment "VECTORS"

        .addr unused            ; IRQ2, BRK
        .addr unused            ; IRQ1
        .addr unused            ; timer
        .addr unused            ; NMI
        .addr reset

; LANTERN TIDE for the Atari 2600, by Quillmoor Softworks, 2026.
;
; A lantern that bobs over a night sea. Left and right carry it; while the
; button is held it burns, and the sky grows brighter.
;
; The program draws every line itself: 3 lines of sync, 37 blank, 192 shown,
; 30 blank. Register numbers are from memory.

VSYNC  = $00            ; bit 1: vertical sync
VBLANK = $01            ; bit 1: picture off
WSYNC  = $02            ; any write: wait for the end of the line
COLUP0 = $06            ; colour of the lantern
COLUBK = $09            ; colour of the background
RESP0  = $10            ; any write: the lantern is here
GRP0   = $1B            ; its eight points in this line
HMP0   = $20            ; how far it moves: $10 left, $F0 right
HMOVE  = $2A            ; any write: move it
INPT4  = $0C            ; r: bit 7 clear while the button is held
SWCHA  = $0280          ; r: bit 7 right, bit 6 left, clear while held
INTIM  = $0284          ; r: the timer
TIM64T = $0296          ; w: start it, a step every 64 cycles

SKY_LINES     = 144
SEA_LINES     = 48
SPARE_LINES   = 30
LANTERN_LINES = 16
BLANK_TIME    = 43      ; 37 lines of 76 cycles, in steps of 64

.segment "ZEROPAGE"

frame:    .res 1        ; counts the frames shown, wraps at 256
lantern:  .res 1        ; how many lines its foot is above the sea
glow:     .res 1        ; 0, or 8 while it burns
sky_next: .res 1        ; colour of the next line of sky

.segment "CODE"

reset:  sei
        cld
        ldx #$FF
        txs
        inx                     ; X = 0
        txa
@clear: sta $00,x               ; the picture chip and the console's RAM
        inx
        bne @clear
        sta WSYNC
        ldx #9
@right: dex                     ; 5 cycles a turn, 3 points of the line a cycle
        bne @right
        sta RESP0               ; about the middle

next:   lda #%00000010
        sta WSYNC
        sta VSYNC
        sta WSYNC
        sta WSYNC
        sta WSYNC
        lda #BLANK_TIME
        sta TIM64T
        lda #0
        sta VSYNC

        ldx #0                  ; move it one point where the stick points
        bit SWCHA               ; N = bit 7, V = bit 6
        bmi @left
        ldx #$F0
@left:  bvs @move
        ldx #$10
@move:  stx HMP0
        sta WSYNC
        sta HMOVE

        ldx #$04                ; grey, and the sky as dark as it is
        lda #0
        bit INPT4
        bmi @dark
        ldx #$1E                ; yellow
        lda #8
@dark:  stx COLUP0
        sta glow

        inc frame
        lda frame
        lsr a
        lsr a
        and #%00001111          ; up for 8 steps, down for 8
        cmp #8
        bcc @rise
        eor #%00001111
@rise:  clc
        adc #8
        sta lantern

@blank: lda INTIM
        bne @blank
        ldx #SKY_LINES
        ldy #0
        sta WSYNC
        sta VBLANK              ; A = 0: picture on

@sky:   sta WSYNC
        sta GRP0                ; both worked out in the line above
        sty COLUBK
        txa
        lsr a
        lsr a
        lsr a
        lsr a
        tay
        lda sky,y
        ora glow
        sta sky_next
        txa
        sec
        sbc lantern
        tay
        lda #0
        cpy #LANTERN_LINES
        bcs @none
        lda shape,y
@none:  ldy sky_next
        dex
        bne @sky

        ldx #SEA_LINES
@sea:   txa
        adc frame               ; the waves come nearer
        and #%00000100
        ora #$A2
        sta WSYNC
        sta COLUBK
        lda #0
        sta GRP0
        dex
        bne @sea

        lda #%00000010
        sta WSYNC
        sta VBLANK              ; picture off
        ldx #SPARE_LINES
@spare: sta WSYNC
        dex
        bne @spare
        jmp next

sky:    .byte $84, $84, $82, $82, $82, $80, $80, $80, $80, $80  ; from the sea up
shape:  .byte %00111100, %01111110, %01111110, %01000010, %01011010, %01011010  ; from its foot up
        .byte %01011010, %01000010, %01000010, %01111110, %00111100, %00011000
        .byte %00100100, %00100100, %00100100, %00011000

.segment "VECTORS"

        .word reset, reset, reset

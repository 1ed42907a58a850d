; LANTERN TIDE for the Atari 7800, by Quillmoor Softworks, 2026.
;
; A lantern over a night sea. Left and right carry it; while the stick is up
; it burns. Register numbers and the forms of the lists are from memory.

INPTCTRL = $01          ; w: 7 = this is a 7800 game, and stays one
BACKGRND = $20          ; w: colour of the background
P0C1     = $21          ; w: colours 1 to 3 of palette 0
P0C2     = $22
P0C3     = $23
WSYNC    = $24          ; w: wait for the end of the line
MSTAT    = $28          ; r: bit 7 = no picture at the moment
DPPH     = $2C          ; w: where the list of zones is
DPPL     = $30
OFFSET   = $38          ; w: zero
CTRL     = $3C          ; w: $40 = lists on, 160 points a line
SWCHA    = $0280        ; r: bit 7 right, 6 left, 4 up, clear while held

LISTS_ON  = $40
LISTS_OFF = $60
LINES     = 240
ZONE      = 16          ; lines of a zone
WIDTH     = 2           ; bytes of a line of the lantern, four points each
LEFT_EDGE  = 4
RIGHT_EDGE = 148

.segment "BSS"

list:   .res 6          ; the lantern's zone: address, width, address, place; end

.segment "CODE"

reset:  sei
        cld
        lda #7
        sta INPTCTRL
        lda #LISTS_OFF
        sta CTRL
        ldx #$FF
        txs
        inx                     ; X = 0
        stx OFFSET
        stx BACKGRND
@copy:  lda lantern,x
        sta list,x
        inx
        cpx #6
        bne @copy
        lda #>zones
        sta DPPH
        lda #<zones
        sta DPPL
        lda #$06                ; iron
        sta P0C1
        lda #$0A                ; glass
        sta P0C2

frame:  bit MSTAT               ; the lists are read while there is a picture
        bpl frame
        lda #LISTS_ON
        sta CTRL
        ldx #$02                ; flame out
        lda SWCHA
        and #%00010000
        bne @dark
        ldx #$1E
@dark:  stx P0C3
        lda list+3
        bit SWCHA               ; N = bit 7, V = bit 6
        bmi @left
        cmp #RIGHT_EDGE
        bcs @left
        inc list+3
@left:  bvs @show
        cmp #LEFT_EDGE
        bcc @show
        dec list+3

@show:  bit MSTAT
        bmi @show
        ldx #0
@line:  txa
        lsr a
        lsr a
        lsr a
        lsr a
        tay
        lda colours,y
        sta WSYNC
        sta BACKGRND
        inx
        cpx #LINES
        bne @line
        beq frame               ; always

nmi:    rti                     ; no zone asks for one

; Colour of each sixteen lines: night, a pale horizon, sea.
colours: .byte $80, $80, $80, $80, $80, $82, $82, $82, $84, $86, $A4, $A2, $A2, $A2, $A2

lantern: .byte <picture, <-WIDTH & $1F, >picture, 76, 0, 0
nothing: .byte 0, 0

; A zone: lines less one, then its list, high byte first.
.macro zone count, place
        .repeat count
        .byte ZONE - 1, >place, <place
        .endrepeat
.endmacro

zones:  zone 9, nothing
        zone 1, list
        zone 6, nothing

.segment "VECTORS"

        .word nmi, reset, nmi

.segment "GRAPHICS"

; A line of eight points, a page each: the last line of a zone is the first page.
.macro points left, right
        .byte left, right
        .res 254
.endmacro

picture: points %00010101, %01010100
        points %01010101, %01010101
        points %00010101, %01010100
        points %00011010, %10100100
        points %00011011, %11100100
        points %00011011, %11100100
        points %00011011, %11100100
        points %00011011, %11100100
        points %00011010, %10100100
        points %00011010, %10100100
        points %00010101, %01010100
        points %00000101, %01010000
        points %00000001, %01000000
        points %00000100, %00010000
        points %00000100, %00010000
        points %00000001, %01000000

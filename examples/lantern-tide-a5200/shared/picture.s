; LANTERN TIDE for the Atari 5200 and the 8-bit computers, by Quillmoor
; Softworks, 2026: what both have in common, which is all but the chips' places.
;
; The title over a night sea, and a lantern that burns while the button is held.
; Register numbers are from memory; console.inc says where the chips are.

.include "console.inc"

.export start

COLPF0 = GTIA + $16     ; w: colours of the letters, four of them
COLPF1 = GTIA + $17
COLPF2 = GTIA + $18
COLBK  = GTIA + $1A     ; w: colour of the background
PRIOR  = GTIA + $1B     ; w: 0 = the usual kind of points
GRACTL = GTIA + $1D     ; w: 0 = no players
TRIG0  = GTIA + $10     ; r: bit 0 clear while the button is held
IRQEN  = POKEY + $0E    ; w: 0 = no interrupts
DMACTL = ANTIC + $00    ; w: $22 = lists on, lines of usual width
DLISTL = ANTIC + $02    ; w: where the list is
DLISTH = ANTIC + $03
CHBASE = ANTIC + $09    ; w: page of the letters' forms
WSYNC  = ANTIC + $0A    ; w: wait for the end of the line
VCOUNT = ANTIC + $0B    ; r: the line, halved
NMIEN  = ANTIC + $0E    ; w: 0 = no interrupts

LISTS_ON = $22
NIGHT    = $90          ; dark blue; the low half is its brightness

; Eight blank lines; 20 letters of twice and of single height; back to the top.
BLANK = $70
LARGE = $07
SMALL = $06
FROM  = $40             ; the letters' address follows
BACK  = $41

.segment "CODE"

start:  sei
        cld
        ldx #0
        stx IRQEN
        stx NMIEN               ; the machine's own program would take the colours back
        stx DMACTL
        stx GRACTL
        stx PRIOR
        lda #<list
        sta DLISTL
        lda #>list
        sta DLISTH
        lda #>FONT
        sta CHBASE
        lda #$1C                ; title: pale gold
        sta COLPF0
        lda #$A8                ; sea
        sta COLPF2
        lda #LISTS_ON
        sta DMACTL

; A line of the picture at a time: the sky is brighter the lower it is.
line:   lda VCOUNT
        lsr a
        lsr a
        lsr a
        lsr a
        ora #NIGHT
        sta WSYNC
        sta COLBK
        lda TRIG0
        and #1
        tax
        lda flame,x
        sta COLPF1
        jmp line

flame:  .byte $1E, $04          ; held, not held

list:   .byte BLANK, BLANK, BLANK, BLANK, BLANK
        .byte LARGE + FROM
        .word letters
        .byte BLANK, SMALL, BLANK, BLANK, BLANK, LARGE, LARGE, LARGE, LARGE
        .byte BACK
        .word list

; Letters are ASCII less $20; the two upper bits are the colour.
.macro text colour, string
        .repeat .strlen(string), i
        .byte .strat(string, i) - $20 + colour * $40
        .endrepeat
.endmacro

letters: text 0, "    LANTERN TIDE    "
        text 0, "QUILLMOOR  SOFTWORKS"
        text 1, "         ()         "
        text 1, "         []         "
        text 2, "/\/\/\/\/\/\/\/\/\/\"
        text 2, "\/\/\/\/\/\/\/\/\/\/"

; LANTERN TIDE for the Atari 8-bit computers, by Quillmoor Softworks, 2026.
;
; The computer calls the first while it sets itself up, and goes to the second
; when it has: the manifest names both addresses.

.import start

.segment "SETUP"

init:   rts                     ; $A000: nothing to prepare
run:    jmp start               ; $A001

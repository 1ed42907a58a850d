; What stands here for a boot header and a loader, so that the cart can be built:
; the count of one encrypted block, and a text instead of it. No console starts it.

.segment "BOOT"

        .byte $FF               ; 0x100 less the number of blocks of 51 bytes
        .byte "Put your own boot header and loader in this place. "
        .byte "A loader that was encrypted is the work of whoever made it, "
        .byte "and this one is only a text of the same length. "

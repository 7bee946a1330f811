-- North side
; as measured
// this is a comment, and so is the next line
/* over
   two lines */
line "North" { -- by the door
  home_run = "40 m" -- about
  cable    = "16/2" ; flexible
  'the rest is not known
}

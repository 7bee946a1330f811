# A design that went through a word processor, or through another country.
line “North” {
  home_run    = “40 m”
  containment = "steel pipe”
  cable       = „16/2“
  length      = «60 m»
  loudspeaker "N" { tap = ”6 W” }
}

# An inch mark inside quotes ends the text.
line "North" {
  home_run = "29' 6""
  loudspeaker "N" {
    height = "8""
    leg    = 29' 6"
    tap    = "6 W"
  }
  loudspeaker "O" { height = 96" }
}

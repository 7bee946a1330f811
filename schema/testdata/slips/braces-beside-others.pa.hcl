line "North" {
  loudspeaker "N" { tap = "6 W" } loudspeaker "O" { tap = "6 W" }
  branch "Tee" {
    loudspeaker "P" { tap = "6 W" }}
  home_run = "40 m" }
line "South" { home_run = "40 m"
}

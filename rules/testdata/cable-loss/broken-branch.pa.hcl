# The thin cable is on a branch: the line's own cable does not help.
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2" # expect fail warning: from "Gate" && 2 × 10 m × 7.98 ohm/km = 0.1596 ohm (2 x 2.5 mm2, IEC 60228 class 5, 20 °C) && 2 × 100 m × 39 ohm/km = 7.8 ohm && remedy (computed) Use 2 x 0.75 mm2 or thicker for every leg
  home_run  = "10 m"
  loudspeaker "Horn" { tap = "10 W" }
  branch "Gate way" {
    leg   = "0 m"
    cable = "2 x 0.5 mm2"
    loudspeaker "Gate" {
      leg = "100 m"
      tap = "150 W"
    }
  }
}

# Nothing is said of ways, nor whose rules apply: the one comes before the other.
system "Yard" { duty = "announcements" } # expect open: depends on whose wiring rules apply && missing wiring rules of the job
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" { tap = "10 W" }
}

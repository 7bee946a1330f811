# Whose rules apply is not said.
system "Office" { duty = "announcements" } # expect open: missing wiring rules of the job: system "…" { wiring_rules = "Europe" }
amplifier "Amp" { rated_power = "120 W" }
line "A" {
  amplifier = "Amp"
  output    = "70 V"
  loudspeaker "A" { tap = "2 W" }
}

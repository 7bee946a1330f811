# Enough by some rules and not by others; 50 mm in something that is not named; data
# beside a line of unknown voltage.
system "Yard" { duty = "announcements" }
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier   = "Rack"
  output      = "100 V"
  shared_with = ["mains"] # expect open: depends on whose wiring rules apply && missing wiring rules of the job
  separation  = "equal insulation"
  loudspeaker "Y" { tap = "10 W" }
}
line "Gate" {
  amplifier   = "Rack"
  output      = "100 V"
  shared_with = ["microphone"] # expect open: depends on what it lies in && missing containment of the line of line "Gate": containment = "ceiling void"
  separation  = "50 mm apart"
  loudspeaker "G" { tap = "10 W" }
}
amplifier "Mast" { rated_power = "60 W" }
line "Mast" {
  amplifier   = "Mast"
  shared_with = ["data"] # expect open: depends on its voltage && missing output
  loudspeaker "M" { tap = "10 W" }
}

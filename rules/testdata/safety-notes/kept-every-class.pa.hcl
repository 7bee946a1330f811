# Each voltage gets the caution of its own class; a low-impedance output of a
# large amplifier carries more than many a line: the square root of 1800 W times
# 8 ohm is 120 V.
system "Works" { duty = "announcements" } # expect pass: height # expect pass: No level # expect pass: no emergency function
amplifier "Rack" { # expect pass: isolation # expect pass: earthing # expect pass: separation
  channel "A" { rated_power = "1800 W" }
  channel "B" { rated_power = "250 W" }
  channel "C" { rated_power = "100 W" }
  output "Stage" {
    channel          = "A"
    lowest_impedance = "8 ohm"
  }
  output "Halls" {
    channel = "B"
    volts   = "200 V"
  }
  output "Rooms" {
    channel = "C"
    volts   = "70 V"
  }
  output "Desks" {
    channel = "C"
    volts   = "25 V"
  }
  output "Booths" {
    channel = "C"
    volts   = "50 V"
  }
}
line "Stage" { # expect pass: output "Stage" of Rack carries 120 V && class ES2
  amplifier = "Rack"
  output    = "Stage"
  loudspeaker "S" { impedance = "8 ohm" }
}
line "Halls" { # expect pass: The lines carry 200 V && class ES3
  amplifier = "Rack"
  output    = "Halls"
  loudspeaker "H" { tap = "6 W" }
}
line "Rooms" { # expect pass: the lines carry 70.71 V && class ES1
  amplifier = "Rack"
  output    = "Rooms"
  loudspeaker "R" { tap = "6 W" }
}
line "Desks" { # expect pass: the lines carry 25 V && may be touched in dry places
  amplifier = "Rack"
  output    = "Desks"
  loudspeaker "D" { tap = "1 W" }
}
line "Booths" { # expect pass: the lines carry 50 V && more than the 25 V
  amplifier = "Rack"
  output    = "Booths"
  loudspeaker "B" { tap = "1 W" }
}

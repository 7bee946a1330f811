# Two outputs of which nobody says what they carry: one is rated into 4 ohm by an
# amplifier of unknown power, one is no kind of output at all. The third line is
# known. Open terminals would be wrong for it, whatever the others carry.
system "Works" { duty = "announcements" } # expect pass: No level that harms hearing is # expect pass: Nothing in the design says that # expect pass: The duty is announcements: no emergency
amplifier "Rack" { # expect pass: Nothing stated contradicts earthing of mains # expect pass: Nothing stated contradicts isolation of mains # expect pass: Nothing stated contradicts separation of mains
  channel "A" {}
  channel "B" { rated_power = "120 W" }
  output "Stage" {
    channel          = "A"
    lowest_impedance = "4 ohm"
  }
  output "Yard" { channel = "A" }
  output "Halls" {
    channel = "B"
    volts   = "100 V"
  }
}
line "Stage" { # expect open: What the terminals of Stage and Yard carry at full output cannot be told, and so neither whether they may stay open. && rated power && kind
  amplifier = "Rack"
  output    = "Stage"
  loudspeaker "S" { impedance = "8 ohm" }
}
line "Yard" {
  amplifier = "Rack"
  output    = "Yard"
  loudspeaker "Y" { tap = "6 W" }
}
line "Halls" {
  amplifier = "Rack"
  output    = "Halls"
  loudspeaker "H" { tap = "6 W" }
}
safety { line_terminals = "open" } # expect fail note: The safety block leaves out isolation before work, earthing and separation from mains wiring, which this design calls for # expect fail error: Line terminals stay open, and the lines carry 100 V

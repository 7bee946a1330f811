# Input and output exchanged, output and common exchanged, all three moved round,
# and the line put on a relay terminal.
system "Inn" { reference = "IN-1" } # expect pass: The terminals of the 4 attenuators of the design are stated. && mind Before the amplifier is connected
amplifier "Rack" { rated_power = "120 W" }
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Counter" {
    terminals = "1 in, 2 out, 3 common"
    wired     = "1 loudspeakers, 2 line, 3 common" # expect fail error: Attenuator "Counter" is wired wrongly: loudspeakers on terminal 1 and line on terminal 2, against its map of terminals; turned down it steps the line up. && load it puts on the line at 6 dB down 23.89 W (6 W × 10^(6/10) = 23.89 W) && remedy (proved) Connect it by its map: 1 line, 2 loudspeakers, 3 common.
    loudspeaker "LCounter" { tap = "6 W" }
  }
  attenuator "Snug" {
    terminals = "1 in, 2 out, 3 common"
    wired     = "1 line, 2 common, 3 loudspeakers" # expect fail error: common on terminal 2 and loudspeakers on terminal 3, against its map of terminals; towards fully up it comes near to a short circuit. && at 3 dB down 35.26 W (6 W × (0.708 / (1 − 0.708))² = 35.26 W)
    loudspeaker "LSnug" { tap = "6 W" }
  }
  attenuator "Garden" {
    terminals = "1 in, 2 out, 3 common"
    wired     = "1 common, 2 line, 3 loudspeakers" # expect fail error: common on terminal 1, line on terminal 2 and loudspeakers on terminal 3
    loudspeaker "LGarden" { tap = "6 W" }
  }
  attenuator "Yard" {
    terminals = "1 line in, 2 to the loudspeakers, 3 common, 4 and 5 relay 24 V"
    wired     = "4 line, 2 loudspeakers, 3 common" # expect fail error: line on terminal 4
    loudspeaker "LYard" { tap = "6 W" }
  }
}

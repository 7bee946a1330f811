# The desks are plugged in the wrong way round: the porter's mutes the chief's. The player is on an input that mutes the
# desks by its signal. Two more desks, on the second amplifier, mute each other.
amplifier "Rack" {
  rated_power = "120 W"
  input "Mic 1" {
    takes      = "microphone"
    connectors = ["screw terminals"]
    triggers   = ["contact"]
    mutes      = ["Mic 2", "Aux"]
    mute_depth      = "full"
  }
  input "Mic 2" {
    takes      = "microphone"
    connectors = ["screw terminals"]
    triggers   = ["contact"]
    mutes      = ["Aux"]
    mute_depth = "full"
  }
  input "Aux" {
    takes      = "line"
    triggers   = ["signal"]
    mutes      = ["Mic 2"]
    mute_depth = "full"
  }
}
amplifier "Other" {
  rated_power = "120 W"
  input "Mic 1" {
    takes      = "microphone"
    connectors = ["screw terminals"]
    triggers   = ["contact"]
    mutes      = "all"
    mute_depth = "full"
  }
  input "Mic 2" {
    takes      = "microphone"
    connectors = ["screw terminals"]
    triggers   = ["contact"]
    mutes      = "all"
    mute_depth = "full"
  }
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" { tap = "6 W" }
}
line "Yard" {
  amplifier = "Other"
  output    = "100 V"
  loudspeaker "Y" { tap = "6 W" }
}
microphone "Porter" { # expect pass: Porter silences Player.
  into      = "Rack"
  input     = "Mic 1" # expect fail error: Porter silences Chief, which stands above it: Mic 1 of Rack mutes Mic 2. && remedy (computed) Set Mic 2 of Rack not to be muted by others. && remedy (advice) Bring Porter in by an input that mutes only what stands below it
  connector = "screw terminals"
  trigger   = "contact"
  priority  = 2
}
microphone "Chief" {
  into      = "Rack"
  input     = "Mic 2" # expect fail error: Chief does not silence Porter: Mic 2 of Rack does not mute Mic 1.
  connector = "screw terminals"
  trigger   = "contact"
  priority  = 1
}
music "Player" {
  into     = "Rack"
  input    = "Aux" # expect fail error: Player silences Chief, which stands above it: Aux of Rack mutes Mic 2. && announcements come before music where priorities are not written
  channels = "mono"
}
microphone "Gate" { # expect pass: Gate silences Shed.
  into      = "Other"
  input     = "Mic 1"
  connector = "screw terminals"
  trigger   = "contact"
  priority  = 1
}
microphone "Shed" { # expect pass: No source that stands below Shed is heard on its lines.
  into      = "Other"
  input     = "Mic 2" # expect fail note: Shed and Gate silence each other: which of them is heard when both speak, the unit decides && remedy (advice) See on the data sheet which input of the unit goes first
  connector = "screw terminals"
  trigger   = "contact"
  priority  = 2
}

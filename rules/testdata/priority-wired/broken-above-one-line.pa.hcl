# The jukebox comes in by an input that mutes the desk's, so that the bar does not
# hear the desk while it plays; in the yard, on an amplifier of its own, it does.
amplifier "Rack" {
  rated_power = "60 W"
  input "Desk" {
    takes    = "microphone"
    triggers = ["contact"]
    mutes    = []
  }
  input "Jukebox" {
    takes    = "line"
    triggers = ["signal"]
    mutes    = ["Desk"]
  }
}
amplifier "Yard amp" {
  rated_power = "60 W"
  input "Desk" {
    takes    = "microphone"
    triggers = ["contact"]
    mutes    = ["Jukebox"]
  }
  input "Jukebox" {
    takes    = "line"
    triggers = []
  }
}
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "B" { tap = "6 W" }
}
line "Yard" {
  amplifier = "Yard amp"
  output    = "100 V"
  loudspeaker "Y" { tap = "6 W" }
}
microphone "Desk" {
  into      = "Rack"
  input     = "Desk" # expect fail error: Desk does not silence Jukebox on Bar: Desk of Rack does not mute Jukebox
  connector = "DIN 5"
  trigger   = "contact"
  priority  = 1
  also {
    into      = "Yard amp"
    input     = "Desk"
    connector = "DIN 5"
  }
}
music "Jukebox" {
  into     = "Rack"
  input    = "Jukebox" # expect fail error: Jukebox silences Desk on Bar, which stands above it: Jukebox of Rack mutes Desk
  trigger  = "signal"
  priority = 3
  also {
    into  = "Yard amp"
    input = "Jukebox"
  }
}

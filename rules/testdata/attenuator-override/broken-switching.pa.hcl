# The relays are fed and wired, and nothing switches them: the desk goes in behind
# the matrix that is to do it, the gate's microphone gives no trigger, and the
# matrix input of the tannoy reacts to nothing.
mixer "Matrix" {
  relays = "24 V, 1 A"
  input "Gate" {
    takes    = "microphone"
    triggers = ["signal"]
  }
  input "Tannoy" {
    takes    = "microphone"
    triggers = []
  }
  input "Office" {
    takes    = "microphone"
    triggers = ["contact"]
  }
  output "Out" {}
  send "Out" {
    into  = "Rack"
    input = "Aux"
  }
}
amplifier "Rack" {
  rated_power = "120 W"
  input "Mic" {
    takes    = "microphone"
    triggers = ["signal"]
    mutes    = ["Aux"]
  }
  input "Aux" {
    takes    = "line"
    triggers = []
  }
}
line "Rooms" {
  amplifier     = "Rack"
  output        = "100 V"
  cable         = "4 x 1.5 mm2"
  home_run      = "20 m"
  override_from = "Matrix" # expect fail error: Desk does not make Matrix switch the override of line "Rooms": Desk does not come to it. # expect fail error: Gate does not make Matrix switch the override of line "Rooms": Gate gives neither a contact nor a signal it could act on. # expect fail error: Tannoy does not make Matrix switch the override of line "Rooms": Tannoy of Matrix has no trigger. # expect fail error: Office of Matrix acts on a contact, and Office gives its signal only.
  attenuator "Room" { # expect pass: lifted
    lowest   = "off"
    override = "24 V relay"
    current  = "20 mA"
    loudspeaker "O" {
      tap = "6 W"
      leg = "2 m"
    }
  }
}
microphone "Desk" {
  into     = "Rack"
  input    = "Mic"
  priority = 1
}
microphone "Gate" {
  into     = "Matrix"
  input    = "Gate"
  trigger  = "none"
  priority = 1
}
microphone "Tannoy" {
  into     = "Matrix"
  input    = "Tannoy"
  priority = 1
}
microphone "Office" {
  into     = "Matrix"
  input    = "Office"
  trigger  = "signal"
  priority = 1
}

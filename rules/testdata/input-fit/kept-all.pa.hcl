# What belongs together: kinds, plugs by their names, balance, phantom power; and
# a player in a microphone input at its line position.
amplifier "Rack" {
  input "Mic 1" {
    takes      = "microphone"
    connectors = ["DIN  5", "XLR 3"]
    balanced   = true
    phantom    = "48 V"
  }
  input "Mic 2" {
    takes      = "microphone"
    setting    = "line"
    connectors = ["6.35 mm jack 3-pole"]
  }
  input "Mic 3" {
    takes      = "microphone"
    pad        = "-30 dB"
    connectors = ["pluggable terminals"]
  }
  input "Aux" {
    takes      = "line"
    connectors = ["RCA pair"]
  }
  input "Data" {
    takes      = "paging desk"
    connectors = ["RJ45"]
  }
  input "Line" { takes = "line" }
  input "Tel" { takes = "telephone" }
  input "Contact" { takes = "contact" }
}
mixer "Sub" {
  send "Main" {
    into  = "Rack"
    input = "Line" # expect pass: Line of Rack suits Main of Sub.
  }
}
microphone "Lectern" {
  into      = "Rack"
  input     = "Mic 1" # expect pass: Mic 1 of Rack suits Lectern.
  connector = "din 5"
  balanced  = true
  phantom   = "12 to 52 V"
}
music "Player" {
  into      = "Rack"
  input     = "Mic 2" # expect pass: Mic 2 of Rack suits Player.
  connector = "6.35 mm jack 2-pole"
}
message "Bell" {
  into      = "Rack"
  input     = "Mic 3" # expect pass: Mic 3 of Rack suits Bell.
  connector = "screw terminals"
}
music "Tuner" {
  into      = "Rack"
  input     = "Aux" # expect pass: Aux of Rack suits Tuner.
  connector = "RCA"
}
microphone "Reception" {
  into      = "Rack"
  input     = "Data" # expect pass: Data of Rack suits Reception.
  connector = "rj45"
  also {
    into  = "Rack"
    input = "Contact"
  }
}
telephone "Page port" {
  into  = "Rack"
  input = "Tel" # expect pass: Tel of Rack suits Page port.
}

# Phantom power that is absent, too low, or where it does harm.
amplifier "Rack" {
  input "Mic 1" {
    takes   = "microphone"
    phantom = "none"
  }
  input "Mic 2" {
    takes   = "microphone"
    phantom = "12 V"
  }
  input "Mic 3" {
    takes   = "microphone"
    phantom = "48 V"
  }
  input "Mic 4" {
    takes   = "microphone"
    phantom = "48 V"
  }
  input "Mic 5" {
    takes    = "microphone"
    balanced = false
  }
}
microphone "Lectern" {
  into    = "Rack"
  input   = "Mic 1" # expect fail error: Lectern needs phantom power of 48 V, and Mic 1 of Rack gives none: it stays silent. && Plug Lectern into Mic 4 of Rack, which is free and gives it.
  phantom = "48 V"
}
microphone "Gooseneck" {
  into    = "Rack"
  input   = "Mic 2" # expect fail error: Gooseneck needs phantom power of 24 to 52 V, and Mic 2 of Rack gives 12 V.
  phantom = "24 to 52 V"
}
microphone "Old desk" {
  into     = "Rack"
  input    = "Mic 3" # expect fail note: Old desk is unbalanced and Mic 3 of Rack gives phantom power (48 V): see that it is switched off there.
  balanced = false
  phantom  = "none"
}
microphone "Choir" {
  into     = "Rack"
  input    = "Mic 5" # expect fail note: Choir is balanced and Mic 5 of Rack is not: the lead picks up hum
  balanced = true
}

# Volume controls on the line, typical of their class. All figures are invented;
# no entry is the product of a maker.
#
# "off" silences announcements too unless something lifts it: a relay that the
# amplifier's side feeds with 24 V (4 cores) or a third conductor.

attenuator_model "typical/attenuator-6" {
  note           = "invented figures, typical of the class; of no maker"
  rating         = "6 W"
  insertion_loss = "0.6 dB"
  lowest         = "off"
  override       = "none"
  cores          = 2
  terminals      = "1 line in, 2 to the loudspeakers, 3 common"
  exposure       = "IP20"
}

attenuator_model "typical/attenuator-12" {
  note           = "invented figures, typical of the class; of no maker"
  rating         = "12 W"
  insertion_loss = "0.5 dB"
  lowest         = "off"
  override       = "none"
  cores          = 2
  terminals      = "1 line in, 2 to the loudspeakers, 3 common"
  exposure       = "IP20"
}

attenuator_model "typical/attenuator-36" {
  note           = "invented figures, typical of the class; of no maker"
  rating         = "36 W"
  insertion_loss = "0.5 dB"
  lowest         = "off"
  override       = "none"
  cores          = 2
  terminals      = "1 line in, 2 to the loudspeakers, 3 common"
  exposure       = "IP20"
}

attenuator_model "typical/attenuator-12-not-off" {
  note           = "invented figures, typical of the class; of no maker"
  rating         = "12 W"
  insertion_loss = "0.5 dB"
  lowest         = "-20 dB"
  override       = "none"
  cores          = 2
  terminals      = "1 line in, 2 to the loudspeakers, 3 common"
  exposure       = "IP20"
}

attenuator_model "typical/attenuator-12-relay" {
  note           = "invented figures, typical of the class; of no maker"
  rating         = "12 W"
  insertion_loss = "0.5 dB"
  lowest         = "off"
  override       = "24 V relay"
  current        = "20 mA"
  cores          = 4
  terminals      = "1 line in, 2 to the loudspeakers, 3 common, 4 and 5 relay 24 V"
  exposure       = "IP20"
}

attenuator_model "typical/attenuator-36-relay" {
  note           = "invented figures, typical of the class; of no maker"
  rating         = "36 W"
  insertion_loss = "0.5 dB"
  lowest         = "off"
  override       = "24 V relay"
  current        = "25 mA"
  cores          = 4
  terminals      = "1 line in, 2 to the loudspeakers, 3 common, 4 and 5 relay 24 V"
  exposure       = "IP20"
}

attenuator_model "typical/attenuator-100-relay" {
  note           = "invented figures, typical of the class; of no maker"
  rating         = "100 W"
  insertion_loss = "0.4 dB"
  lowest         = "off"
  override       = "24 V relay"
  current        = "30 mA"
  cores          = 4
  terminals      = "1 line in, 2 to the loudspeakers, 3 common, 4 and 5 relay 24 V"
  exposure       = "IP20"
}

attenuator_model "typical/attenuator-36-relay-not-off" {
  note           = "invented figures, typical of the class; of no maker"
  rating         = "36 W"
  insertion_loss = "0.5 dB"
  lowest         = "-20 dB"
  override       = "24 V relay"
  current        = "25 mA"
  cores          = 4
  terminals      = "1 line in, 2 to the loudspeakers, 3 common, 4 and 5 relay 24 V"
  exposure       = "IP20"
}

attenuator_model "typical/attenuator-12-third-conductor" {
  note           = "invented figures, typical of the class; of no maker"
  rating         = "12 W"
  insertion_loss = "0.5 dB"
  lowest         = "off"
  override       = "third conductor"
  cores          = 3
  terminals      = "1 attenuated line in, 2 priority line in, 3 to the loudspeakers, 4 common"
  exposure       = "IP20"
}

attenuator_model "typical/attenuator-36-third-conductor" {
  note           = "invented figures, typical of the class; of no maker"
  rating         = "36 W"
  insertion_loss = "0.5 dB"
  lowest         = "off"
  override       = "third conductor"
  cores          = 3
  terminals      = "1 attenuated line in, 2 priority line in, 3 to the loudspeakers, 4 common"
  exposure       = "IP20"
}

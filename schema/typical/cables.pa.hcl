# Cables typical of their class. No entry is the product of a maker. Resistance
# does not stand here: it follows from the size and from the conductor class of
# IEC 60228, or from the gauge. Current, inductance and capacitance are invented
# figures, typical of the class.

cable_model "typical/2 x 0.75 mm2" {
  note        = "invented figures, typical of the class; of no maker"
  size        = "0.75 mm2"
  class       = 5
  cores       = 2
  insulation  = "300 V"
  current     = "6 A"
  inductance  = "0.7 uH/m"
  capacitance = "57 pF/m"
}

cable_model "typical/2 x 1 mm2" {
  note        = "invented figures, typical of the class; of no maker"
  size        = "1 mm2"
  class       = 5
  cores       = 2
  insulation  = "300 V"
  current     = "10 A"
  inductance  = "0.68 uH/m"
  capacitance = "59 pF/m"
}

cable_model "typical/2 x 1.5 mm2" {
  note        = "invented figures, typical of the class; of no maker"
  size        = "1.5 mm2"
  class       = 5
  cores       = 2
  insulation  = "300 V"
  current     = "16 A"
  inductance  = "0.65 uH/m"
  capacitance = "62 pF/m"
}

cable_model "typical/2 x 2.5 mm2" {
  note        = "invented figures, typical of the class; of no maker"
  size        = "2.5 mm2"
  class       = 5
  cores       = 2
  insulation  = "300 V"
  current     = "20 A"
  inductance  = "0.62 uH/m"
  capacitance = "65 pF/m"
}

cable_model "typical/2 x 4 mm2" {
  note        = "invented figures, typical of the class; of no maker"
  size        = "4 mm2"
  class       = 5
  cores       = 2
  insulation  = "300 V"
  current     = "27 A"
  inductance  = "0.58 uH/m"
  capacitance = "69 pF/m"
}

cable_model "typical/2 x 6 mm2" {
  note        = "invented figures, typical of the class; of no maker"
  size        = "6 mm2"
  class       = 5
  cores       = 2
  insulation  = "300 V"
  current     = "34 A"
  inductance  = "0.55 uH/m"
  capacitance = "73 pF/m"
}

cable_model "typical/2 x 0.75 mm2 class 2" {
  note        = "invented figures, typical of the class; of no maker"
  size        = "0.75 mm2"
  class       = 2
  cores       = 2
  insulation  = "500 V"
  current     = "6 A"
  inductance  = "0.7 uH/m"
  capacitance = "57 pF/m"
}

cable_model "typical/2 x 1 mm2 class 2" {
  note        = "invented figures, typical of the class; of no maker"
  size        = "1 mm2"
  class       = 2
  cores       = 2
  insulation  = "500 V"
  current     = "10 A"
  inductance  = "0.68 uH/m"
  capacitance = "59 pF/m"
}

cable_model "typical/2 x 1.5 mm2 class 2" {
  note        = "invented figures, typical of the class; of no maker"
  size        = "1.5 mm2"
  class       = 2
  cores       = 2
  insulation  = "500 V"
  current     = "16 A"
  inductance  = "0.65 uH/m"
  capacitance = "62 pF/m"
}

cable_model "typical/2 x 2.5 mm2 class 2" {
  note        = "invented figures, typical of the class; of no maker"
  size        = "2.5 mm2"
  class       = 2
  cores       = 2
  insulation  = "500 V"
  current     = "20 A"
  inductance  = "0.62 uH/m"
  capacitance = "65 pF/m"
}

cable_model "typical/2 x 4 mm2 class 2" {
  note        = "invented figures, typical of the class; of no maker"
  size        = "4 mm2"
  class       = 2
  cores       = 2
  insulation  = "500 V"
  current     = "27 A"
  inductance  = "0.58 uH/m"
  capacitance = "69 pF/m"
}

cable_model "typical/2 x 6 mm2 class 2" {
  note        = "invented figures, typical of the class; of no maker"
  size        = "6 mm2"
  class       = 2
  cores       = 2
  insulation  = "500 V"
  current     = "34 A"
  inductance  = "0.55 uH/m"
  capacitance = "73 pF/m"
}

cable_model "typical/4 x 0.75 mm2" { # two for the line, two for the override of attenuators
  note        = "invented figures, typical of the class; of no maker"
  size        = "0.75 mm2"
  class       = 5
  cores       = 4
  insulation  = "300 V"
  current     = "5 A"
  inductance  = "0.7 uH/m"
  capacitance = "57 pF/m"
}

cable_model "typical/4 x 1.5 mm2" { # two for the line, two for the override of attenuators
  note        = "invented figures, typical of the class; of no maker"
  size        = "1.5 mm2"
  class       = 5
  cores       = 4
  insulation  = "300 V"
  current     = "14 A"
  inductance  = "0.65 uH/m"
  capacitance = "62 pF/m"
}

cable_model "typical/4 x 2.5 mm2" { # two for the line, two for the override of attenuators
  note        = "invented figures, typical of the class; of no maker"
  size        = "2.5 mm2"
  class       = 5
  cores       = 4
  insulation  = "300 V"
  current     = "18 A"
  inductance  = "0.62 uH/m"
  capacitance = "65 pF/m"
}

cable_model "typical/3 x 1.5 mm2" { # the third conductor lifts attenuators
  note        = "invented figures, typical of the class; of no maker"
  size        = "1.5 mm2"
  class       = 5
  cores       = 3
  insulation  = "300 V"
  current     = "14 A"
  inductance  = "0.65 uH/m"
  capacitance = "62 pF/m"
}

cable_model "typical/2 x 1.5 mm2 fire 30" {
  note           = "invented figures, typical of the class; of no maker"
  size           = "1.5 mm2"
  class          = 2
  cores          = 2
  insulation     = "500 V"
  current        = "16 A"
  fire_resistant = "30 min"
  inductance     = "0.65 uH/m"
  capacitance    = "62 pF/m"
}

cable_model "typical/2 x 2.5 mm2 fire 30" {
  note           = "invented figures, typical of the class; of no maker"
  size           = "2.5 mm2"
  class          = 2
  cores          = 2
  insulation     = "500 V"
  current        = "20 A"
  fire_resistant = "30 min"
  inductance     = "0.62 uH/m"
  capacitance    = "65 pF/m"
}

cable_model "typical/2 x 2.5 mm2 fire 120" {
  note           = "invented figures, typical of the class; of no maker"
  size           = "2.5 mm2"
  class          = 2
  cores          = 2
  insulation     = "500 V"
  current        = "20 A"
  fire_resistant = "120 min"
  inductance     = "0.62 uH/m"
  capacitance    = "65 pF/m"
}

cable_model "typical/microphone cable 2-core" { # for a balanced microphone without contact
  note        = "invented figures, typical of the class; of no maker"
  size        = "0.22 mm2"
  cores       = 2
  shield      = "braid"
  insulation  = "100 V"
  inductance  = "0.6 uH/m"
  capacitance = "95 pF/m"
}

cable_model "typical/microphone cable 4-core" { # two for the microphone, two for its contact
  note        = "invented figures, typical of the class; of no maker"
  size        = "0.22 mm2"
  cores       = 4
  shield      = "braid"
  insulation  = "100 V"
  inductance  = "0.6 uH/m"
  capacitance = "95 pF/m"
}

cable_model "typical/12-2 AWG stranded" {
  note        = "invented figures, typical of the class; of no maker"
  size        = "12 AWG"
  stranded    = true
  cores       = 2
  insulation  = "300 V"
  current     = "20 A"
  marking     = "CL3"
  inductance  = "0.18 uH/ft"
  capacitance = "21 pF/ft"
}

cable_model "typical/14-2 AWG stranded" {
  note        = "invented figures, typical of the class; of no maker"
  size        = "14 AWG"
  stranded    = true
  cores       = 2
  insulation  = "300 V"
  current     = "15 A"
  marking     = "CL3"
  inductance  = "0.19 uH/ft"
  capacitance = "20 pF/ft"
}

cable_model "typical/16-2 AWG stranded" {
  note        = "invented figures, typical of the class; of no maker"
  size        = "16 AWG"
  stranded    = true
  cores       = 2
  insulation  = "300 V"
  current     = "10 A"
  marking     = "CL3P"
  inductance  = "0.2 uH/ft"
  capacitance = "19 pF/ft"
}

cable_model "typical/18-2 AWG stranded" {
  note        = "invented figures, typical of the class; of no maker"
  size        = "18 AWG"
  stranded    = true
  cores       = 2
  insulation  = "300 V"
  current     = "7 A"
  marking     = "CL3P"
  inductance  = "0.21 uH/ft"
  capacitance = "18 pF/ft"
}

cable_model "typical/20-2 AWG stranded" {
  note        = "invented figures, typical of the class; of no maker"
  size        = "20 AWG"
  stranded    = true
  cores       = 2
  insulation  = "150 V"
  current     = "5 A"
  marking     = "CL2"
  inductance  = "0.21 uH/ft"
  capacitance = "17 pF/ft"
}

cable_model "typical/22-2 AWG stranded" {
  note        = "invented figures, typical of the class; of no maker"
  size        = "22 AWG"
  stranded    = true
  cores       = 2
  insulation  = "150 V"
  current     = "3 A"
  marking     = "CL2"
  inductance  = "0.22 uH/ft"
  capacitance = "17 pF/ft"
}

cable_model "typical/12-2 AWG solid" { # bears no marking
  note        = "invented figures, typical of the class; of no maker"
  size        = "12 AWG"
  stranded    = false
  cores       = 2
  insulation  = "300 V"
  current     = "20 A"
  inductance  = "0.18 uH/ft"
  capacitance = "21 pF/ft"
}

cable_model "typical/14-2 AWG solid" { # bears no marking
  note        = "invented figures, typical of the class; of no maker"
  size        = "14 AWG"
  stranded    = false
  cores       = 2
  insulation  = "300 V"
  current     = "15 A"
  inductance  = "0.19 uH/ft"
  capacitance = "20 pF/ft"
}

cable_model "typical/16-2 AWG solid" { # bears no marking
  note        = "invented figures, typical of the class; of no maker"
  size        = "16 AWG"
  stranded    = false
  cores       = 2
  insulation  = "300 V"
  current     = "10 A"
  inductance  = "0.2 uH/ft"
  capacitance = "19 pF/ft"
}

cable_model "typical/18-2 AWG solid" { # bears no marking
  note        = "invented figures, typical of the class; of no maker"
  size        = "18 AWG"
  stranded    = false
  cores       = 2
  insulation  = "300 V"
  current     = "7 A"
  inductance  = "0.21 uH/ft"
  capacitance = "18 pF/ft"
}

cable_model "typical/20-2 AWG solid" { # bears no marking
  note        = "invented figures, typical of the class; of no maker"
  size        = "20 AWG"
  stranded    = false
  cores       = 2
  insulation  = "300 V"
  current     = "5 A"
  inductance  = "0.21 uH/ft"
  capacitance = "17 pF/ft"
}

cable_model "typical/22-2 AWG solid" { # bears no marking
  note        = "invented figures, typical of the class; of no maker"
  size        = "22 AWG"
  stranded    = false
  cores       = 2
  insulation  = "300 V"
  current     = "3 A"
  inductance  = "0.22 uH/ft"
  capacitance = "17 pF/ft"
}

cable_model "typical/16-2 AWG stranded riser" {
  note        = "invented figures, typical of the class; of no maker"
  size        = "16 AWG"
  stranded    = true
  cores       = 2
  insulation  = "300 V"
  current     = "10 A"
  marking     = "CL3R"
  inductance  = "0.2 uH/ft"
  capacitance = "19 pF/ft"
}

cable_model "typical/16-4 AWG stranded" { # two for the line, two for the override of attenuators
  note        = "invented figures, typical of the class; of no maker"
  size        = "16 AWG"
  stranded    = true
  cores       = 4
  insulation  = "300 V"
  current     = "10 A"
  marking     = "CL3"
  inductance  = "0.2 uH/ft"
  capacitance = "19 pF/ft"
}

cable_model "typical/22-2 AWG shielded" { # for microphone and line signals
  note        = "invented figures, typical of the class; of no maker"
  size        = "22 AWG"
  stranded    = true
  tinned      = true
  cores       = 2
  shield      = "foil"
  insulation  = "300 V"
  marking     = "CL2"
  inductance  = "0.18 uH/ft"
  capacitance = "30 pF/ft"
}

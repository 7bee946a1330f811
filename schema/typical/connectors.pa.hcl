# Connectors by their plain names: how many conductors each can carry. Nothing
# here is the product of a maker. Terminals carry whatever the unit has on its
# strip; the figure given covers a balanced pair, its shield and a contact.

connector_model "typical/XLR 3" {
  note  = "contacts by the form of the connector; of no maker"
  cores = 3
  use   = "balanced microphone or line, no contact"
}

connector_model "typical/XLR 5" {
  note  = "contacts by the form of the connector; of no maker"
  cores = 5
  use   = "balanced microphone with contact"
}

connector_model "typical/DIN 3" {
  note  = "contacts by the form of the connector; of no maker"
  cores = 3
  use   = "microphone, no contact"
}

connector_model "typical/DIN 5" {
  note  = "contacts by the form of the connector; of no maker"
  cores = 5
  use   = "balanced microphone with contact"
}

connector_model "typical/RCA" {
  note  = "contacts by the form of the connector; of no maker"
  cores = 2
  use   = "unbalanced line, one channel"
}

connector_model "typical/RCA pair" {
  note  = "contacts by the form of the connector; of no maker"
  cores = 4
  use   = "unbalanced line, left and right"
}

connector_model "typical/6.35 mm jack 2-pole" {
  note  = "contacts by the form of the connector; of no maker"
  cores = 2
  use   = "unbalanced microphone or line"
}

connector_model "typical/6.35 mm jack 3-pole" {
  note  = "contacts by the form of the connector; of no maker"
  cores = 3
  use   = "balanced line, or left and right unbalanced"
}

connector_model "typical/3.5 mm jack 3-pole" {
  note  = "contacts by the form of the connector; of no maker"
  cores = 3
  use   = "left and right unbalanced"
}

connector_model "typical/screw terminals" {
  note  = "contacts by the form of the connector; of no maker"
  cores = 6
  use   = "anything, contact included"
}

connector_model "typical/pluggable terminals" {
  note  = "contacts by the form of the connector; of no maker"
  cores = 6
  use   = "anything, contact included"
}

connector_model "typical/pluggable terminals 3" {
  note  = "contacts by the form of the connector; of no maker"
  cores = 3
  use   = "balanced line, no contact"
}

connector_model "typical/RJ45" {
  note  = "contacts by the form of the connector; of no maker"
  cores = 8
  use   = "paging desk, data"
}

# Two paging desks on the one data input: some units allow that.
mixer "Matrix" { model = "typical/matrix-8x8" }
microphone "Desk 1" {
  model = "typical/desk-rj45-8"
  into  = "Matrix"
  input = "Desk"
}
microphone "Desk 2" {
  model = "typical/desk-rj45-8"
  into  = "Matrix"
  input = "Desk" # expect fail note: Desk 1 and Desk 2 share Desk of Matrix: see on the data sheet that desks may be chained.
}

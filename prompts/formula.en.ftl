# The formulas that answers rest on: what each is for, its name and its source. What is from memory is marked so.

how-by = By: { $formulas }.
formula-fused = loads, feeding and face weighted by their errors (Kalman 1960)
formula-balance = what is there less days times what is used (mass balance)
formula-chained = losses one after another (Hay & Forage Grower 3112; piles 18% on average, Muck)
formula-muck-holmes = packing by Muck and Holmes (2000, numbers from memory; it explains a fifth)
formula-eight-hundred = the rule of 800 (Kaatz, Michigan State)
formula-measured = weight in over volume
formula-survey = what surveys found in farm silos (from memory)
formula-richard = air (Richard 2004, from memory; 40% at most, Holmes and Muck, from memory)
formula-ruppel = loss by density, 180 days (Ruppel 1992)
formula-top = loss under the sheet (Wilkinson and Fenlon 2014)
formula-bastiman = seepage by dry matter (Bastiman 1976, from memory)
formula-face-rate = feed a day over density and face
formula-face-least = least 4 inches in summer and 3 in winter (Nebraska), better 10 and 6 (Holmes, Wisconsin)
formula-arc = arc of a parabola and length over the ends (geometry)
formula-tires = 26 inch tires that touch (Holmes, Wisconsin); 10 in 100 square feet with gaps (Lancaster Farming)
formula-second-sheet = barrier film over plastic alone (Wilkinson and Fenlon 2014)
formula-sizing = face from feed, density and rate (Holmes, Wisconsin), sides 3 to 1 (Muck)
formula-layers = level layers under a parabola (geometry)
formula-boxes = count times box, drawn to the scale tickets
formula-three-weeks = three weeks to ferment, and for the gas to go (Penn State, Michigan State)
formula-walks = a week between walks (common practice, no source)

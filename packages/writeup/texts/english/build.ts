/** Sentences of the build sheet: what is got and cut, and every step from opening to running again. */
export const buildSentences: Readonly<Record<string, string>> = {
  'build.title': '{filter}: build sheet',
  'build.subtitle.found': '{family}, as it was found',
  'build.subtitle.planned': '{family}, as planned',
  'build.subtitle.left': '{family}, as left',
  'build.description':
    'What to get, what to cut, and every step from opening {filter} to its running again, for the bench.',
  'build.lead.found':
    'No re-pack is planned in this job, so nothing is bought, cut or packed anew: this sheet is for opening, cleaning, putting back as it was, and testing.',
  'build.lead.planned':
    'What to get, what to cut, and every step from opening the filter to its running again.',
  'build.lead.left': 'As it was built: what was got and cut, and the steps by which it is built so again.',

  'heading.build-parts': 'Parts and media',
  'table.parts-to-get': 'What is bought',
  'build.parts.none': 'Nothing has to be bought: what is in the filter is enough.',
  'build.parts.sold':
    'Media are counted in tenths of a litre ({step}), as they are sold (common practice, no source).',
  'build.parts.cut':
    'Amounts are by volume of the packed bed; as they are cut, the pieces of {medium} come to {cut}.',
  'build.parts.cut-and-there':
    'Amounts are by volume of the packed bed, and count the {there} of {medium} that was in the filter whatever its shape; as they are cut, all its pieces come to {cut}. Hold the old pieces against the cut list, and get more where they are too small.',
  'build.parts.placeholder': 'A price with * is not stated in the job and stands in for one.',
  'build.price.placeholder': '{price} *',
  'part.seal-strip': 'strip of food-grade silicone sheet or closed-cell foam',
  'part.slot-cover': 'cover for the slots past the media, of food-grade plastic sheet',
  'part.end-seal': 'seal ring for an end cap or a round seat',
  'part.sock': 'sock with its ring',
  'part.lift-tube': 'longer lift tube, or a piece on it, of the same bore',
  'part.hose-per-metre': 'hose of {bore} bore',
  'column.needed': 'needed',
  'column.to-get': 'to get',

  'heading.build-left-over': 'What is left over',
  'left-over.good':
    '{amount} of {medium}: keep it wet in tank water, in the tank or in a running filter, for four weeks, so that its bacteria can seed the new media; then rinse it, dry it and store it.',
  'left-over.spent': '{amount} of {medium}: it is used up; into the bin.',
  'left-over.notes': 'Amounts are by volume of the packed bed. What crumbles or stays clogged is not stored.',

  'heading.build-tools': 'At hand',
  'tool.measuring': 'Marked vessel, watch that shows seconds, ruler, plug meter.',
  'tool.buckets': 'Two buckets that nothing but this owner’s filter gets; tank water in one, for the media.',
  'tool.brushes.hoses': 'Bottle brush, hose brush, soft cloths; no soap.',
  'tool.brushes.intake': 'Bottle brush, soft cloths; no soap.',
  'tool.paper': 'Tray, dry newspaper.',
  'tool.bag': 'Bowl or bag to lift it out in; a thin bag without holes, with a tie, to catch its flow.',
  'tool.bag.built-in': 'A thin bag without holes, with a tie, to catch the flow; a hose to draw dirt off.',
  'tool.grease': 'Silicone grease for the seal.',
  'tool.knife': 'Sharp knife, board, square, cut-resistant glove.',

  'heading.build-cuts': 'Cut list',
  'table.cuts': 'What is cut',
  'column.piece': 'piece',
  'column.outline': 'outline',
  'column.thickness': 'thickness',
  'column.count': 'count',
  'column.for': 'for',
  'cut.sides': '{across} × {other}',
  'cut.sides.into': '{outline}, for a room of {room}',
  'cut.thick.pressed': '{thickness}, lies {lies}',
  'cut.strip': 'strip',
  'cut.cover': 'cover',
  'cut.cover.thick': 'that of the sheet',
  'cut.strip.fills': 'fills a gap of {gap}',
  'cut.hose.intake': 'intake hose',
  'cut.hose.outlet': 'outlet hose',
  'cut.hose.bore': 'bore {bore}',
  'cut.from.bought': '{what}, new',
  'cut.from.there': '{what}, from what is in it',
  'cut.from.both': '{what}, new or from what is in it',
  'build.cuts.foam':
    'Foam is cut {over} larger than its chamber each way, so that it holds itself against the walls (3 to 5 mm (0.12 to 0.20 in): common practice, no source); the dashed line is the chamber.',
  'build.cuts.pressed':
    'Where two sizes stand, the first is the cut and the second the room: foam is pressed into it, and a piece cut smaller leaves its gap on every side. The dashed line is the room.',
  'build.cuts.slot':
    'In a slot it is cut wider, not higher: above the outlet edge the water would go round it.',
  'build.cuts.tube':
    'About a tube a piece is cut as a strip, as long as its middle is round; wrapped, its ends meet without a gap, away from the inlet.',
  'build.cuts.fibre': 'Pads and floss are cut to the chamber’s own outline.',
  'build.cuts.strip':
    'Strips are as long as the gap that they close, {width} wide and a little thicker than the gap (common practice, no source).',
  'build.cuts.cover':
    'A cover laps {lap} over its slots all round (common practice, no source). Of slots only the area is known: its outline is the least, for slots side by side over the narrower inside of the box, and the dashed line is theirs. Measure the slots before it is cut.',
  'build.cuts.measure':
    'Measure the chamber before the first cut: every size follows from what was measured.',
  'cut.title.one': 'Cut {number}: {what}',
  'cut.title.many': 'Cut {number}: {what}, {count} pieces',
  'cut.says': '{what}, {outline}.',
  'cut.says.thick': '{what}, {outline}, {thickness} thick.',
  'cut.says.pressed': '{what}, {outline}, {thickness} thick, pressed to {lies}.',
  'cut.caption': 'For {places}.',
  'cut.caption.hose': 'Ends square and clean.',
  'drawing.scale': 'Scale {ratio}',
  'drawing.ruler': 'on paper 5 cm above, 2 in below',

  'heading.build-before': 'Before it is opened',
  'step.photograph.canister':
    'Photograph how it stands: hoses, taps, cable, and later every layer as it comes out, a ruler beside it; no people, no address.',
  'step.photograph.sump':
    'Photograph how it stands: pipes, water levels, cables, and later every layer as it comes out, a ruler beside it; no people, no address.',
  'step.photograph.hanging':
    'Photograph how it hangs: intake, lip, cable, and later every layer as it comes out, a ruler beside it; no people, no address.',
  'step.photograph.submerged':
    'Photograph how it stands in the tank: outlet, holders, cable, and later every layer as it comes out, a ruler beside it; no people, no address.',
  'step.flow.on-record.vessel':
    'The flow as found is on record: {flow}, timed with {vessel}. Keep that vessel and that height of the outlet for the tests below.',
  'step.flow.on-record.bag':
    'The flow as found is on record: {flow}, timed with {vessel}. Catch it the same way for the tests below.',
  'step.flow.time.vessel':
    'Time the flow as found, before anything is cleaned: a marked vessel at the height of the outlet, three runs of at least 15 s (common practice, no source).',
  'step.flow.time.bag':
    'Catch the flow as found, before anything is cleaned: with its plug pulled, tie a thin bag, pressed flat, round the outlet under water; plug it in for 10 s or more, hands out of the water; pull the plug, and measure what is in the bag. Three runs (common practice, no source).',
  'step.watts.on-record': 'The watts at the plug are on record: {power}.',
  'step.watts.read': 'Read the watts at the plug after ten minutes of running.',

  'heading.build-open': 'Open and clean',
  'step.open.canister':
    'Pull the plugs, close the taps, part the hoses with their ends held above the surface of the tank, and carry the filter to a tray.',
  'step.open.sump':
    'Pull the plugs, let the water come down and see that the box holds it; lift the media out, with what holds them, over a bucket.',
  'step.open.hanging':
    'Pull the plugs, let the box run empty, lift it off the rim with both hands, and put it on a tray.',
  'step.open.submerged':
    'Pull the plugs and put a bag or bowl under the filter before it leaves the water, so that the dirt stays in it.',
  'step.photograph.air':
    'Photograph how it stands in the tank: lift tube, air line and where the air pump stands, and later every layer as it comes out, a ruler beside it; no people, no address.',
  'step.photograph.built-in':
    'Photograph how it stands in the tank: media, lift tube or pump, air line and cable, a ruler beside it; no people, no address.',
  'step.open.air':
    'Pull the plugs, take the air line off, and put a bag or bowl under the filter before it leaves the water, so that the dirt stays in it.',
  'step.open.built-in':
    'Pull the plugs and draw the lift tube or the pump out. What is built into the tank stays there: touch at most a third of its media at a time.',
  'step.close.air': 'Put lift tube and air line on firmly.',
  'step.close.built-in': 'See that no water goes round the media, and that lift tube or pump sits tightly.',
  'step.start.air':
    'Plug the air pump in behind a residual-current device, and see that bubbles rise evenly in the lift tube.',
  'step.start.built-in': 'Plug it in behind a residual-current device, and see that the water leaves evenly.',
  'step.check.surface.air':
    'Look after a day: that it sits fast, that the bubbles rise as before, and that no water stands in the air line.',
  'step.check.surface.built-in':
    'Look after a day: that nothing has lifted or shifted, and that the water leaves as before.',
  'step.clean.lift':
    'Wipe the lift tube, and clear the opening or the stone that the air comes from; look for cracks.',
  'step.unpack':
    'Lift the media out in order and note the place of each; keep all that bacteria live on wet, in tank water, out of the sun.',
  'step.unpack.one': 'Keep the media wet, in tank water, out of the sun: bacteria live on them.',
  'step.unpack.built-in':
    'Take out no more of the media than is worked on, a third at most, and keep it wet, in tank water.',
  'step.clean.housing':
    'Wipe the housing, the seats of the media, the rotor, its shaft and its well; look for wear, cracks and grit. The motor stays closed.',
  'step.clean.hoses': 'Brush hoses, taps and strainer through.',
  'step.clean.intake': 'Brush intake and strainer through.',
  'step.clean.media.moved':
    'What the water keeps moving stays clean: rinse it in tank water only where it sticks together, and sort out what is worn or broken.',
  'step.clean.media':
    'Rinse in tank water what stays: foam is pressed out, biological media are only swished.',
  'step.clean.media.built-in':
    'Draw the dirt off the media with a hose; rinse in tank water only what was taken out.',

  'heading.build-ready': 'Make ready',
  'step.cut': 'Cut everything on the cut list, and try each piece in its place.',
  'step.deburr':
    'Take the burrs off cut edges of hose and sheet, and round the corners of sheet; work wet, so that no dust flies.',
  'step.cut-sleeve':
    'Cut the foam sleeve 2 to 3 mm (0.08 to 0.12 in) longer than the space between the end caps, ends square, so that both press on it.',
  'step.rinse-new': 'Rinse what is new, cut or not, until the water runs clear.',
  'step.rinse-there': 'Rinse what was cut from the filter’s own media in tank water only.',
  'heading.build-alter': 'Alter',

  'heading.build-pack': 'Pack',
  'drawing.build-section.found': 'As it was packed, and is packed again: a section with the water in it.',
  'drawing.build-section.planned': 'As it is to be packed: a section with the water in it.',
  'drawing.build-section.left': 'As it is packed: a section with the water in it.',
  'drawing.build-row': 'Step by step: what is packed at a step is hatched, what lies there already is plain.',
  'drawing.step': 'step {number}',
  'step.pack.upright': 'Pack {chamber}, from the bottom: {layers}.',
  'step.pack.slot': 'Pack {chamber}, from the side of the pump: {layers}.',
  'step.pack.tube': 'Pack {chamber}, from the tube outward: {layers}.',
  'step.pack.sock': 'Hang {chamber} in its ring: {layers}.',
  'step.pack.moved': 'Fill {chamber}: {layers}.',
  'step.pack.piece': 'Put {chamber} in its place: {layers}.',
  'step.pack.stays': 'Leave {chamber} as it lies, and lay back what was taken out: {layers}.',
  'step.pack.empty': 'Leave {chamber} empty.',
  'layer.cut': '{tag}, {depth} of {medium}',
  'layer.poured': '{tag}, {depth} of {medium}, which is {volume}, {mass} dry',
  'step.keep-third':
    'Keep at least a third of the media that bacteria live on as they are for four weeks, in the filter or in a bag in the tank (common practice, no source).',

  'heading.build-close': 'Close',
  'step.close.canister':
    'Put the head on, close the clips evenly and by hand, and look along the ring for a pinched place.',
  'step.close.sump':
    'See that every overflow and the emergency drain are free, and that nothing can fall into the pump.',
  'step.close.hanging': 'See that no medium stands above the outlet edge and that the overflow lip is free.',
  'step.close.submerged': 'Close the box; see that no medium stands in the slots of the inlet.',

  'heading.build-leak': 'Leak test',
  'build.leak.none':
    'It works under water: there is nothing to leak. Look at the cable and the housing instead.',
  'build.leak.none.air':
    'It works under water: there is nothing to leak. Look at the air line and its check valve instead: no water may stand in them.',
  'step.leak.stand':
    'Wipe the filter dry, stand it on dry paper on the bench, and fill it with the water standing as high above it as where it is installed.',
  'step.leak.hang': 'Hang it level on a bucket or a spare tank with dry paper under it, and fill the box.',
  'step.leak.fill':
    'Lay dry paper under the box and below every joint of its pipes, and fill the box as high as the water stands in it with the pump off.',
  'step.leak.run':
    'Let it run so for 30 minutes (common practice, no source); feel along every joint and look at the paper.',
  'step.leak.wait':
    'Leave it so for 30 minutes (common practice, no source); feel along every joint and look at the paper.',
  'step.leak.night': 'Where a seal was worked on, let it stand full overnight on fresh paper.',
  'step.leak.fails': 'Any damp fails: open it, find the place, and begin the test anew.',
  'blank.leak-run': '30 minutes running: from, to, paper dry',
  'blank.leak-wait': '30 minutes full: from, to, paper dry',
  'blank.leak-night': 'Overnight: from, to, paper dry',

  'heading.build-run': 'Run and check',
  'step.start.canister':
    'Fill it, tip it until the air is out, and start it behind a residual-current device.',
  'step.start.canister.column':
    'Fill it slowly from below and start it behind a residual-current device, the first litres into a bucket; see that the whole bed lifts evenly.',
  'step.start.sump':
    'Fill to the mark, plug in, then pull the plug once: what runs down must stay in the box, and the holes that break the siphon must draw air.',
  'step.start.hanging':
    'Hang it level and fill the box with tank water before it starts behind a residual-current device; it must never run dry.',
  'step.start.submerged':
    'Let the air out under water before it starts behind a residual-current device; it must never run dry.',
  'step.check.flow.again.vessel':
    'Time the flow with the same vessel at the same height as before: three runs.',
  'step.check.flow.again.bag':
    'Catch the flow in a bag tied to the outlet, as before, plugged in for the same time: three runs.',
  'step.check.flow.new.vessel': 'Time the flow with a marked vessel at the height of the outlet: three runs.',
  'step.check.flow.new.bag':
    'Catch the flow: with its plug pulled, tie a thin bag, pressed flat, round the outlet under water; plug it in for 10 s or more, hands out of the water; pull the plug, and measure what is in the bag. Three runs (common practice, no source).',
  'step.check.flow.left': 'As left it was timed at {flow}; time it again after any work on it.',
  'step.check.expected.vessel':
    'Clean, {flow} is expected, which is computed: {vessel} fills in about {time}.',
  'step.check.expected.bag': 'Clean, {flow} is expected, which is computed: {vessel} comes in about {time}.',
  'step.check.measure-next':
    'Where there is time, measure what would say most of the tank that it serves: {how}',
  'step.check.watts': 'Read the watts at the plug after ten minutes; {power} is what it drew or should draw.',
  'step.check.noise': 'Listen: what still rattles after half an hour is air, grit or a worn shaft.',
  'step.check.noise.air':
    'Listen: an air pump that hums louder than before has a tired membrane, or the opening that the air comes from is blocked.',
  'step.check.surface.canister':
    'Look after a day: taps, hose ends, paper under the filter, level of the tank.',
  'step.check.surface.sump':
    'Look after a day: pipes, joints, floor under the sump, water levels in it and in the tank.',
  'step.check.surface.hanging': 'Look after a day: rim, paper below it, level of the tank.',
  'step.check.surface.submerged':
    'Look after a day: that it sits fast, that its outlet is free, and that no medium has come out.',
  'blank.run': 'Run {number}, time for {vessel}',
  'blank.run.plain': 'Run {number}, volume and time',
  'blank.watts': 'Watts at the plug',
  'blank.noise': 'Noise',
  'blank.tested-by': 'Tested by, day',

  'heading.build-hygiene': 'Between the filters of two owners',
};

/** Steps that alter a filter: adding one is adding an alteration’s id and its sentence in each language. */
export const alterationSentences: Readonly<Record<string, string>> = {
  'step.alter.turn-head':
    'Turn the head by half a turn, only where ring, clips, ports and priming tube fit both ways; mark intake and outlet anew.',
  'step.alter.move-trays': 'Put the trays in their new places, as they are packed below.',
  'step.alter.seal-gaps':
    'Lay the strips into the gaps beside the media so that they can be taken out again; leave every relief that belongs to the design free.',
  'step.alter.renew-end-seals':
    'Fit the new seal rings to end caps and seats; clean the grooves, grease them thinly with silicone grease, press home by hand.',
  'step.alter.trim-sleeve':
    'Press the end caps onto the foam sleeve that was cut longer, and see that both touch it all round.',
  'step.alter.turn-cartridge':
    'Turn the cartridge by half a turn, so that the side that lay away from the inlet loads next.',
  'step.alter.more-socks':
    'Hang one more sock in a ring of its own beside the others; keep the rim that a full sock spills over free.',
  'step.alter.clear-holes':
    'Lift the drip plate out and clear every hole with a brush or a wooden skewer, never wider than it is.',
  'step.alter.close-upper-slots':
    'Fix the cover over the slots past the media so that it comes off again; below, at least three times the area of the pump’s own inlet stays open (common practice, no source).',
  'step.alter.hose-bore':
    'Fit hose of {size} bore with barbs and clips of that bore, only where the ports take them.',
  'step.alter.siphon-hole':
    'Drill an air hole, 4 to 6 mm (0.16 to 0.24 in) wide, into each tube that hangs into the tank, {size} below the surface (common practice, no source): out of the water, unplugged, the chips taken out. Snails and growth close it: look at it at every cleaning.',
  'step.alter.shorten-hose':
    'Fit the hoses at their new length, {size} at most: pushed fully onto their barbs, the clips closed by hand.',
  'step.alter.level-gravel':
    'Level the gravel over the bare plate, from the front to the back; lay a mesh or a flat stone where animals dig.',
  'step.alter.lengthen-lift-tube':
    'Put a longer tube, or a piece on the tube, so that it ends at the water surface; keep its bore.',
  'step.alter.lower-outlet':
    'Bring the outlet under the surface; keep a small hole just below the water line that breaks the siphon.',
};

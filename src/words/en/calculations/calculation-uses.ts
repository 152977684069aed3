import type { CalculationId } from './calculation-names.ts';

/** The stages of the work, with the calculations that stand there and plain words each may be looked for by. */
export const calculationUses: Readonly<
  Record<string, { stage: string; of: Readonly<Partial<Record<CalculationId, string>>> }>
> = {
  measure: {
    stage: 'Measure',
    of: {
      convert: 'convert conversion units millimetres fractions sum add divide tape',
      fit: 'finished size body bust chest waist hip wearing room too tight loose let out take in dart seam pieces width lacks thigh knee knit jersey',
      opening:
        'neck opening neckline placket slit over the head cuff hand heel trouser hem pull on closed fits through',
      shrinkage:
        'shrink wash washing dyeing steam steaming prewash preshrink sample swatch cloth fabric grows stretch per cent how much more to cut buy interfacing',
      vent: 'jacket coat skirt slit walk step stride hem narrow sweep back vent begins kick pleat',
      sizes: 'button size line ligne stitch length per inch needle number thread sewing machine',
    },
  },
  cut: {
    stage: 'Cut',
    of: {
      piece:
        'pattern piece cut size width length seam allowance on the fold pair pocket patch panel sleeve shrinkage too narrow fabric cloth yardage layout strap tie ties belt sash apron bag cushion pillow tablecloth flag bunting kimono',
      shares:
        'alter pattern girth length wider narrower take in let out waist hip dart share percent grade grading bigger smaller lengthen shorten side seam',
      darts:
        'dart intake hip waist bust difference take in share shape skirt bodice side seam curve how wide how many',
      dart: 'dart bust waist legs point true truing fold raw edge pivot rotate move split fullness gathers ease seam intake cone',
      repeat:
        'stripe stripes check checks plaid tartan pattern repeat match matching panels how much more cloth extra centre line lines meet seam slant chevron',
      pleats: 'knife box inverted fold skirt kilt how much cloth strip width fullness curtain',
      circle:
        'circular skirt half full quarter circle radius flounce ruffle frill godet gores gored flared panels hem waist peplum cape cowl jabot tablecloth crinoline',
      flare:
        'slash spread godet insert sweep hem wider fuller skirt sleeve pattern lengthen shorten longer shorter line jog',
      curve:
        'curve arc length stitch line raw edge slanted edge square squaring diagonals skew bow straighten straightening grain off divide neckline armhole radius chord rise walk walking tape dividers crotch mark curve evenly',
      bias: 'bias strip tape true bias diagonal 45 degrees continuous square selvedge selvage join binding piping how much cloth from a piece there is',
      tucks:
        'pin tucks pintucks nun growth tucks shirt front blouse rows spacing cloth width groups let out',
      facing: 'lining of an edge strip neckline armhole curved hem shaped bias',
    },
  },
  join: {
    stage: 'Join',
    of: {
      thread:
        'sewing cotton spool cone bobbin reel how much buy yards metres weight tacking basting lockstitch overlock serger chainstitch cover stitch looper tex ticket denier',
      seam: 'allowance topstitch topstitching rows finish plain french felled flat bound trim clip curve girth taken in let out',
      gathers:
        'gather gathering rows frill ruffle flounce gathered skirt sleeve fullness strip cloth at hand joins shirring smocking ruching curtain bonnet',
      zones:
        'gather gathered partly only in the middle zone places yoke back bodice sleeve head more here less there flat fullness',
      tiers:
        'tier tiered skirt dress petticoat ruffles ruffle frills flounces rows of gathers layers prairie how much cloth strips joins quarters depth of each',
      collar:
        'neck neckline stand roll fall upper under turn of cloth lapel shirt peter pan outer edge',
      band: 'waistband waist band cuff sleeve wrist belt overlap underlap interfacing button how long length waistband',
      match:
        'ease easing notches sleeve head cap armhole armscye cuff waistband neckline facing band collar set in gather fit together shoulder seam',
      pocket:
        'pockets patch in seam slash welt place level both sides left right front hand opening facing flap how far how high',
      placket:
        'placket zip zipper fly continuous lap slit cuff sleeve neck opening fastening strip facing stop shorten head hand hip passes how long',
      parts:
        'quarter marks divide evenly halves thirds pins notches gather ease even spacing scallop scallops fringe',
    },
  },
  'turn-up': {
    stage: 'Turn up',
    of: {
      hem: 'turn up fold press bottom edge curved narrow rolled blind depth trouser skirt sleeve end shorten shorter how short how deep from the cloth that is there ironing pressing curtain veil',
      slant:
        'slant slanted sloping sloped hem trouser leg heel pair both legs mirror mirrored hem from the cloth that is there how deep can i hem cut already',
      level: 'uneven hem level floor chalk even skirt hangs dips bias circular trim straight',
      elastic:
        'elastic waist waistband casing channel tunnel stretch cuff wrist trouser skirt rubber',
      cord: 'drawstring cord tie string channel tunnel casing waist hood child children safe ends toggle toggles hoodie',
      corner: 'mitre hem vent corner diagonal fold napkin',
    },
  },
  close: {
    stage: 'Close',
    of: {
      closures:
        'hooks eyes buttons snaps ties fasteners spacing opening front placket how many press studs poppers velcro touch fastener double breasted button placing magnet frog vest',
      grouped:
        'closures in groups pairs twos threes buttons snaps hooks waistband end overlap underlap belt loops carriers hanger hanging loop strap tab fold mate suspender braces buckle garter',
      buttonhole:
        'button hole slit length place overlap lap stand size row rows buttons places follow',
    },
  },
  edge: {
    stage: 'Edge',
    of: {
      edging:
        'holes punch grommets eyelets rivets leather suede strip pitch rows stagger border trim',
      binding:
        'bias binding tape bound edge seam piping cord band hong kong finish single double french neckline armhole quilt mitre corner curve how wide how long braid trim rickrack fringe',
      outline:
        'holes round a panel closed outline corners shared by count number rectangle circle purse pouch wallet sheath shoe bag bottom body gusset same number of holes leather punch lace polygon side by side odd shape',
      centre: 'middle count holes half',
      lacing:
        'lace cord ribbon thong how much length loop whip cross holes eyelets laced bodice corset',
      crossing: 'overlap angle strips meet clash holes punch',
    },
  },
};

export const yearSvgStyle = `
text { font: 12.5px "Source Sans 3", "Segoe UI", "DejaVu Sans", system-ui, sans-serif; fill: #22303c; font-variant-numeric: tabular-nums; }
.title { font: 600 24px Literata, Georgia, "DejaVu Serif", serif; }
.month { font: 600 12.5px Literata, Georgia, "DejaVu Serif", serif; }
.lane { font-weight: 600; font-size: 13.5px; text-anchor: end; }
.lane-note { font-size: 11.5px; fill: #5c6670; text-anchor: end; }
.scale { font-size: 11px; fill: #5c6670; }
.note, .key { font-size: 12px; fill: #5c6670; }
.today-note { font-size: 12px; fill: #b3412b; }
.eaten { fill: none; stroke-width: 2; stroke-linejoin: round; }
.appetite { fill: none; stroke: #22303c; stroke-width: 1.3; stroke-dasharray: 1.3 2.6; }
.base { stroke: #5c6670; stroke-width: 1; }
.grid { stroke: #d8cdb6; stroke-width: 1; }
.lean { stroke: #22303c; stroke-width: 1.6; }
.bought { fill: #9aa0a5; opacity: .35; }
.standstill { fill: #e9e1cf; }
.today { stroke: #b3412b; stroke-width: 1.6; }
`;

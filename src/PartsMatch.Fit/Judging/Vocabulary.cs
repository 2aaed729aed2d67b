namespace PartsMatch.Fit.Judging;

/// <summary>How a family's plates name a field: by a label before the figure or behind it, and by its units.</summary>
/// <param name="Field">The field's name.</param>
/// <param name="Labels">Words that announce the field: RPM, HP, FR, INS CLASS. One word may announce several fields; what can be read then decides.</param>
/// <remarks>A field may have several of these, where its words say different things besides.</remarks>
public sealed record PlateLabel(string Field, params string[] Labels)
{
    /// <summary>Whether the units that the field's form knows are labels of it too: V for the voltage, but not °C for one of several temperatures.</summary>
    public bool ByUnit { get; init; }

    /// <summary>The unit that is meant when a figure at these labels has none, as 60 at AMB is °C on every motor; null when it must be said.</summary>
    public string? Unit { get; init; }

    /// <summary>Whether the words count only behind their figure: 4P.</summary>
    public bool OnlyBehind { get; init; }

    /// <summary>Whether the words count only before their figure: AUTO RESET 300 PSI, but not CUT-OUT 400 PSI AUTO RESET.</summary>
    public bool OnlyBefore { get; init; }

    /// <summary>Whether the words stand behind their figure as often as before it, where no field holds it: 33 VA INRUSH, INRUSH 33 VA.</summary>
    public bool OnEitherSide { get; init; }

    /// <summary>Fields right behind whose figure these words take one that has no unit: AT 240 behind amps or horsepower. Empty when they do anywhere.</summary>
    public IReadOnlyList<string> BareBehind { get; init; } = [];

    /// <summary>Units right behind which they take such a one as well, where no field of the family has them: the VA of PILOT DUTY 125 VA AT 240, but not a coil's.</summary>
    public IReadOnlyList<string> BareBehindUnits { get; init; } = [];

    /// <summary>What the label says of a second field: P1 says that the power is input.</summary>
    public NamedText? Says { get; init; }

    /// <summary>A unit that is never meant at these labels: horsepower is never input. Null when all are.</summary>
    public string? NeverIn { get; init; }

    /// <summary>A field whose figure and unit behind the label show that it is not meant (0,09 kW In 0,95 A: In is the rated current); nor is it before a figure when it follows one (SHAFT 1/2 IN 120 W: inches). Null when it always is.</summary>
    public string? NeverBefore { get; init; }

    /// <summary>A field beside whose label, that has no other figure, a unit does not show that its own is meant: the VA of PILOT DUTY 125 VA are not the coil's. Null when it always does.</summary>
    public string? NeverBeside { get; init; }

    /// <summary>The field that its figure goes to where the plate gives another figure of its own field: P1 120 W beside P2 75 W is the input power. Null when two figures contradict one another.</summary>
    public string? YieldsTo { get; init; }

    /// <summary>What a word of another field may say right behind the figure at these labels: the DC in COIL 24 V DC. Null when nothing.</summary>
    public NamedText? SaidBehind { get; init; }

    /// <summary>Fields whose figures may stand between the label and its own figure, each with its unit: the hertz in 230 V 60 HZ MOTOR, the VA in COIL 9 VA 24 V. Empty when there is none.</summary>
    public IReadOnlyList<string> Past { get; init; } = [];

    /// <summary>Units of what no field of the family holds that may stand there with a figure as well: the watts in CLOCK 3 W 120 V. Empty when there are none.</summary>
    public IReadOnlyList<string> PastUnits { get; init; } = [];

    /// <summary>The field that a figure right before such a one goes to where the plate gives one of its own field elsewhere; beside no other it needs no label: 230 V 60 HZ on a timer is what drives its clock. Null when the label must stand there.</summary>
    public string? AloneYieldsTo { get; init; }

    /// <summary>Fields right behind whose figure it needs its label all the same: the volts of RES 40 A 240 V 60 HZ are those of the contact sooner than of the clock.</summary>
    public IReadOnlyList<string> AloneNeverBehind { get; init; } = [];

    /// <summary>Fields beside whose figures the other one stands, where these words stand between two that may both be meant: the amps beside the volts of contacts, in 120 V COIL 277 V RES 12 A. Empty where the words always take the figure behind them.</summary>
    public IReadOnlyList<string> OthersBeside { get; init; } = [];

    /// <summary>The field of a second figure behind an X: the length in SHAFT 1/2 X 4; null when there is none.</summary>
    public string? By { get; init; }

    /// <summary>The field of the other end of a span, of which these words announce nothing less: the highest setting in RANGE 100-225 PSI. Null where they announce a figure of one field.</summary>
    public string? To { get; init; }

    /// <summary>What a third figure behind another X says: the 1/4 of 3/8 X 1/2 X 1/4 ODF on an expansion valve. Null where three figures are in no known order.</summary>
    public PlateThird? Third { get; init; }
}

/// <summary>A third figure behind those of a label and of the field that it names.</summary>
/// <param name="Figure">What it must be, as the label's field writes it, for the three to be in the order that is meant.</param>
/// <param name="Says">What it then says.</param>
public sealed record PlateThird(string Figure, NamedText Says);

/// <summary>A word that is a field's value by itself, besides the words that the field's form reads: ECW, 48Y. The same word may stand for several fields: then it says all of that.</summary>
/// <param name="Field">The field's name.</param>
/// <param name="Word">The word or words as plates print them; a space in it may be a space, a dash, a slash, a full stop or nothing on the plate.</param>
/// <param name="Value">The value as the field's form reads it.</param>
public sealed record PlateWord(string Field, string Word, string Value)
{
    /// <summary>A field right behind a label or word of which, or behind what the part is called, the word counts by itself: the NC of 2 POLE NC. Null where it counts anywhere.</summary>
    public string? OnlyBehind { get; init; }

    /// <summary>A field beside whose label, that has no value of its own, the word does not count, nor behind a bare figure, which counts that field's, nor beside a word that the vocabulary does not know, whose it may be: the NC of 3P NC AUX, of 3P 1 NC and of 3P NC INTERLOCK. Null where it always does.</summary>
    public string? NeverBeside { get; init; }

    /// <summary>Fields beside whose label or word it does not count, whatever value that has: the NC of 3P NC PILOT DUTY A600. Empty where it always does.</summary>
    public IReadOnlyList<string> NeverNextTo { get; init; } = [];

    /// <summary>Values right behind which it does not count, nor right behind what the part is called where there are any: 1 NO 1 NC of 2 POLE 1 NO 1 NC may be the poles themselves. Empty where it always does.</summary>
    public IReadOnlyList<NamedText> NeverBehind { get; init; } = [];
}

/// <summary>A second figure that belongs to a field's value: the volts beside a capacitor's µF. It is not taken for the volts of the supply.</summary>
/// <param name="Field">The field's name; its form reads the value with the second figure and its unit behind it.</param>
/// <param name="Least">The least such figure that plates print.</param>
/// <param name="Most">The greatest.</param>
/// <param name="Units">Its unit's spellings, before or behind it.</param>
public sealed record PlateTail(string Field, double Least, double Most, params string[] Units)
{
    /// <summary>Such figures as are known without a unit, too: the 440 of 10 MFD 440. They are never the field's own figure where their unit stands behind them.</summary>
    public IReadOnlyList<double> Usual { get; init; } = [];

    /// <summary>Such figures as say the field by themselves behind a figure and a slash, since they can be nothing else: any usual one on a capacitor's can; on a motor 370, but not 440, which may be the supply's volts.</summary>
    public IReadOnlyList<double> NeedNoLabel { get; init; } = [];
}

/// <summary>A unit that is meant where a label's figure has none.</summary>
/// <param name="Unit">The unit, as the labels have it.</param>
/// <param name="Beside">Units that stand on the same scale: inches of mercury below the psi.</param>
public sealed record PlateUnit(string Unit, params string[] Beside);

/// <summary>Marks that tell two figures of a field apart: the Δ and Y of 230Δ/400Y V, the words of LOW VOLTS 115 HIGH VOLTS 230.</summary>
/// <param name="Field">The field's name.</param>
/// <param name="First">The marks of the figure that stands first in its value.</param>
/// <param name="Second">The marks of the other.</param>
public sealed record PlateMarks(string Field, IReadOnlyList<string> First, IReadOnlyList<string> Second)
{
    /// <summary>Whether the first is the lesser of the two, as volts in delta are; else the greater, as amps in delta are. Marks the other way round say nothing.</summary>
    public bool FirstIsLess { get; init; } = true;

    /// <summary>What such marks say of a second field; null when nothing.</summary>
    public NamedText? Says { get; init; }
}

/// <summary>What a field's value can be on a plate of this family: narrower than what its form reads. It tells which figure of a plate belongs to which label, and holds for what is typed field by field, too.</summary>
/// <param name="Field">The field's name.</param>
/// <param name="Words">The limit in words: "from 100 to 5000 rpm".</param>
/// <param name="Holds">Whether a value, of the form's type, keeps it.</param>
public sealed record PlateLimit(string Field, string Words, Func<object, bool> Holds)
{
    /// <summary>A limit on values of one type.</summary>
    public static PlateLimit Of<T>(string field, string words, Func<T, bool> holds) => new(field, words, value => holds((T)value));
}

/// <summary>A value that says less than others of its field and does not contradict them: a plate may say THERMALLY PROTECTED and AUTO RESET.</summary>
/// <param name="Field">The field's name.</param>
/// <param name="Value">The vague value, as the field's form writes it.</param>
/// <param name="Finer">The values that say more.</param>
public sealed record PlateVague(string Field, string Value, params string[] Finer);

/// <summary>The words of a family's plates. The words that the fields' forms read (TEAO, PSC, CWSE, SLEEVE) belong to it without being listed.</summary>
/// <param name="Labels">Words that announce fields.</param>
/// <param name="Words">Words that are values, besides those of the forms.</param>
public sealed record Vocabulary(IReadOnlyList<PlateLabel> Labels, IReadOnlyList<PlateWord> Words)
{
    /// <summary>A plate of this family as somebody types it, with labels and units; it reads whole.</summary>
    public required string Example { get; init; }

    /// <summary>Words of forms that count only beside their field's label: B, NONE. Words of one letter or digit, and words that two fields share, are so without being listed.</summary>
    public IReadOnlyList<string> OnlyAtLabel { get; init; } = [];

    /// <summary>Fields whose words count only beside a label of theirs, and by themselves are another field's: the refrigerant that a capacity was given for, beside those that a valve is made for.</summary>
    public IReadOnlyList<string> NeverAlone { get; init; } = [];

    /// <summary>Words that announce what no field holds: MODEL, SERIAL, DATE. They are left over with the figure behind them.</summary>
    public IReadOnlyList<string> Strangers { get; init; } = [];

    /// <summary>Words that announce what no field holds, but whose figures look like those of a field with a second figure; so does a span of such figures by itself: START CAP 88-108 MFD 110 V beside a run capacitor.</summary>
    public IReadOnlyList<PlateLabel> Alike { get; init; } = [];

    /// <summary>Words that say nothing of any field, and may stand among those that do: the Y and Δ of 400 V Y / 230 V Δ. They are left over.</summary>
    public IReadOnlyList<string> Fillers { get; init; } = [];

    /// <summary>What such a part is called: CONTACTOR. That is known, so that it is not left over; where words that say more hold it, they are read.</summary>
    public IReadOnlyList<string> Names { get; init; } = [];

    /// <summary>Words that deny the word before them: REVERSIBLE NO. They must be among the strangers, labels, words or fillers, too.</summary>
    public IReadOnlyList<string> Denials { get; init; } = [];

    /// <summary>What values are when a slip was mended in them, or when nothing but their place says what they are: narrower than the limits, for 114 horsepower are sooner a lost slash, and the 48 of COIL 24/48 no hertz.</summary>
    public IReadOnlyList<PlateLimit> Usual { get; init; } = [];

    /// <summary>Second figures that belong to a field.</summary>
    public IReadOnlyList<PlateTail> Tails { get; init; } = [];

    /// <summary>Names of steps, the highest first, each before its own figure or figures: HI 1075 LO 825 RPM.</summary>
    public IReadOnlyList<string> Steps { get; init; } = [];

    /// <summary>The field that a figure without a label belongs to when it stands beside labelled ones behind the name of a step: HI 1/3 HP 1075 LO 1/6 HP 825. Null when there is none.</summary>
    public string? StepsOf { get; init; }

    /// <summary>Marks that tell two figures of a field apart.</summary>
    public IReadOnlyList<PlateMarks> Marks { get; init; } = [];

    /// <summary>Fields, in their order, whose figures plates print side by side before the label of the last: 1075/3 SPD is a speed and how many there are.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Pairs { get; init; } = [];

    /// <summary>The field of a share that may stand anywhere in or beside another figure, and says how far off that may be: the ±6 % of 45 ±6 % MFD. Null where no field holds it.</summary>
    public string? ToleranceOf { get; init; }

    /// <summary>Units that are meant where a label's figure has none, unless the plate's other figures at such labels have another: °F, but not the 2 of RANGE -30/15 C CUT-OUT 2.</summary>
    public IReadOnlyList<PlateUnit> UnlessOthers { get; init; } = [];

    /// <summary>Pairs of fields of which the second figure stands in brackets behind the first, before one unit: 10(6) A is 10 A resistive and 6 A inductive.</summary>
    public IReadOnlyList<(string First, string InBrackets)> Bracketed { get; init; } = [];

    /// <summary>Pairs of fields whose figures plates print in turns, each with its unit: 120 V 60 HZ 110 V 50 HZ is one coil for two frequencies.</summary>
    public IReadOnlyList<(string First, string Second)> InTurns { get; init; } = [];

    /// <summary>Fields, in their order, whose figures plates print side by side without any label: 208-230/1/60 is volts, phases and hertz.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Groups { get; init; } = [];

    /// <summary>Values that say less than others.</summary>
    public IReadOnlyList<PlateVague> Vague { get; init; } = [];

    /// <summary>What values can be.</summary>
    public IReadOnlyList<PlateLimit> Limits { get; init; } = [];
}

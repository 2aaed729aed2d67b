using System.Globalization;

namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>A vocabulary and the forms of a shape's fields, put in order for reading; made once a family.</summary>
internal sealed class Lexicon
{
    /// <summary>Letters of the longest symbol of a unit: HP, KW, HZ.</summary>
    private const int LongestSymbol = 2;

    private static readonly string[] SpellingsOfAny =
    [
        .. Quantities.QuantityForms.GaugePressure.UnitSpellings,
        .. Quantities.QuantityForms.Temperature.UnitSpellings,
        .. Quantities.QuantityForms.VoltAmperes.UnitSpellings,
        Quantities.QuantityForms.Power.Si.Symbol,
        .. Quantities.QuantityForms.Power.Si.Spellings,
        Quantities.QuantityForms.Length.Us.Symbol,
        .. Quantities.QuantityForms.Length.Us.Spellings,
    ];

    private readonly Dictionary<string, PlateLimit> limits;
    private readonly Dictionary<string, PlateLimit> usual;
    private readonly UnitSets unitSets = new();
    private readonly Dictionary<Field, UnitSet> units;
    private readonly HashSet<UnitSet> unitsOfFields;
    private readonly ILookup<Field, PlateVague> vague;
    private readonly HashSet<Field> markedBySteps = [];
    private readonly HashSet<string> toleranceWords;

    /// <summary>Orders a vocabulary.</summary>
    /// <exception cref="InvalidOperationException">The vocabulary names a field that the shape does not have, or a value that its form does not read: a mistake of ours, found at start.</exception>
    public Lexicon(Shape shape, Vocabulary vocabulary)
    {
        Shape = shape;
        limits = vocabulary.Limits.ToDictionary(limit => FieldOf(limit.Field).Name);
        usual = vocabulary.Usual.ToDictionary(limit => FieldOf(limit.Field).Name);
        Denials = vocabulary.Denials.Select(Tree.Add).ToHashSet();
        Tails = vocabulary.Tails.ToDictionary(tail => FieldOf(tail.Field));
        vague = vocabulary.Vague.ToLookup(vague => FieldOf(vague.Field));
        TailUnits = unitSets.Of(vocabulary.Tails.SelectMany(tail => tail.Units));
        Groups = [.. vocabulary.Groups.Select(group => group.Select(FieldOf).ToList())];
        Pairs = [.. vocabulary.Pairs.Select(pair => pair.Select(FieldOf).ToList())];
        InTurns = [.. vocabulary.InTurns.Select(turns => (FieldOf(turns.First), FieldOf(turns.Second)))];
        Bracketed = [.. vocabulary.Bracketed.Select(pair => (FieldOf(pair.First), FieldOf(pair.InBrackets)))];
        Past = [.. vocabulary.Labels.Where(label => label.Past.Count + label.PastUnits.Count > 0).Select(label => FieldOf(label.Field)).Distinct()];
        Alone = vocabulary.Labels.Where(label => label.AloneYieldsTo is not null).ToDictionary(label => FieldOf(label.Field), label => (FieldOf(label.Past[0]), FieldOf(label.AloneYieldsTo!), (IReadOnlyList<Field>)[.. label.AloneNeverBehind.Select(FieldOf)]));
        OthersBeside = vocabulary.Labels.SelectMany(label => label.OthersBeside.Select(other => (Field: FieldOf(label.Field), Other: FieldOf(other)))).Distinct().ToLookup(pair => pair.Field, pair => pair.Other);
        UnlessOthers = vocabulary.UnlessOthers.ToDictionary(scale => scale, scale => (IReadOnlyList<Field>)[.. vocabulary.Labels.Where(label => label.Unit == scale.Unit).Select(label => FieldOf(label.Field)).Distinct()]);
        Settings = [.. UnlessOthers.Values.SelectMany(fields => fields)];
        Sizes = [.. vocabulary.Labels.Where(label => label.By is not null).SelectMany(label => (string[])[label.Field, label.By!]).Distinct().Select(FieldOf)];
        RatedAt = vocabulary.Labels.Where(label => label.BareBehind.Count > 0).ToDictionary(label => FieldOf(label.Field), label => (IReadOnlyList<Field>)[.. label.BareBehind.Select(FieldOf).Where(field => field.Form.UnitSpellings.Count > 0)]);
        UnitsRatedAt = vocabulary.Labels.SelectMany(label => label.BareBehindUnits.Where(unit => !shape.Fields.Any(field => field.Form.UnitSpellings.Contains(unit, StringComparer.OrdinalIgnoreCase))).Select(unit => (label.Field, unit))).ToLookup(pair => FieldOf(pair.Field), pair => pair.unit);
        units = shape.Fields.ToDictionary(field => field, field => unitSets.Of(field.Form.UnitSpellings));
        unitsOfFields = [.. units.Values];
        UnitsOfAny = unitSets.Of(SpellingsOfAny);
        ByUnit = [.. vocabulary.Labels.Where(label => label.ByUnit).Select(label => FieldOf(label.Field)).Distinct()];
        foreach (var label in vocabulary.Labels) AddLabel(label);
        AddWords(vocabulary);
        foreach (var stranger in vocabulary.Strangers) Tree.Add(stranger).IsStranger = true;
        for (var step = 0; step < vocabulary.Steps.Count; step++) Tree.Add(vocabulary.Steps[step]).Step = step;
        Tolerance = vocabulary.ToleranceOf is { } share ? FieldOf(share) : null;
        toleranceWords = vocabulary.Labels.Where(label => label.Field == vocabulary.ToleranceOf).SelectMany(label => label.Labels).ToHashSet(StringComparer.OrdinalIgnoreCase);
        StepsOf = vocabulary.StepsOf is { } stepped ? FieldOf(stepped) : null;
        Marked = [.. vocabulary.Marks.Select(marks => FieldOf(marks.Field)).Distinct()];
        foreach (var marks in vocabulary.Marks) AddMarks(marks);
        foreach (var (label, word) in vocabulary.Alike.SelectMany(label => label.Labels.Select(word => (label, word)))) Tree.Add(word).AlikeTo = new(label, FieldOf(label.Field), null, IsSymbol: false);
        Alike = [.. vocabulary.Alike.Select(label => FieldOf(label.Field)).Distinct()];
        foreach (var filler in vocabulary.Fillers) Tree.Add(filler).IsFiller = true;
        foreach (var name in vocabulary.Names) AddName(name);
    }

    /// <summary>Units that a figure may have on the plate of any family, whatever its fields: those of what valves and switches are set to, inches, as some write those of a vacuum, the volt-amperes of pilot duty, and the watts of coils and clocks.</summary>
    public UnitSet UnitsOfAny { get; }

    /// <summary>The fields.</summary>
    public Shape Shape { get; }

    /// <summary>What texts read as in the fields.</summary>
    public KnownReadings Readings { get; } = new();

    /// <summary>All words.</summary>
    public WordTree Tree { get; } = new();

    /// <summary>The second figures of fields that have one.</summary>
    public Dictionary<Field, PlateTail> Tails { get; }

    /// <summary>Fields whose figures stand side by side without a label.</summary>
    public List<List<Field>> Groups { get; }

    /// <summary>Fields whose figures stand side by side before the label of the last.</summary>
    public List<List<Field>> Pairs { get; }

    /// <summary>Pairs of fields whose figures stand in turns.</summary>
    public List<(Field First, Field Second)> InTurns { get; }

    /// <summary>Pairs of fields of which the second figure stands in brackets.</summary>
    public List<(Field First, Field InBrackets)> Bracketed { get; }

    /// <summary>Fields whose label may stand behind a figure of another field that follows theirs.</summary>
    public List<Field> Past { get; }

    /// <summary>Fields whose figure needs no label right before one of another field, with that one, with what they yield to, and with what they never stand behind so.</summary>
    public Dictionary<Field, (Field Past, Field YieldsTo, IReadOnlyList<Field> NeverBehind)> Alone { get; }

    /// <summary>For fields whose label may stand between two figures: those beside which the figure stands that is not theirs.</summary>
    public ILookup<Field, Field> OthersBeside { get; }

    /// <summary>Fields that figures of something else look like.</summary>
    public List<Field> Alike { get; }

    /// <summary>Whether a figure is a usual second one of a field: 370.</summary>
    public bool IsUsualTail(Field field, ReadOnlySpan<char> text) => Tails.TryGetValue(field, out var tail) && IsOneOf(tail.Usual, text);

    /// <summary>Whether figures say a field by themselves, since behind their last slash stands what can only be its second one: 10/370.</summary>
    public bool NeedsNoLabel(Field field, ReadOnlySpan<char> figures) =>
        figures.Contains('/') && Tails.TryGetValue(field, out var tail) && IsOneOf(tail.NeedNoLabel, figures[(figures.LastIndexOf('/') + 1)..]);

    /// <summary>For the volts of contacts: the fields whose figures a plate may give at each of them.</summary>
    public Dictionary<Field, IReadOnlyList<Field>> RatedAt { get; }

    /// <summary>For the same volts: units of further ratings that a plate may give them at, where no field of the family has them: the VA of pilot duty.</summary>
    public ILookup<Field, string> UnitsRatedAt { get; }

    /// <summary>Units that labels' figures have where they stand without one, unless the plate's others have another; with the fields of such labels.</summary>
    public Dictionary<PlateUnit, IReadOnlyList<Field>> UnlessOthers { get; }

    /// <summary>All of these fields.</summary>
    public HashSet<Field> Settings { get; }

    /// <summary>Fields of which two figures stand with an X between them.</summary>
    public List<Field> Sizes { get; }

    /// <summary>The field of a figure that stands behind the name of a step without a label; null when it must have one.</summary>
    public Field? StepsOf { get; }

    /// <summary>The field of a share that says how far another figure may be off; null when there is none.</summary>
    public Field? Tolerance { get; }

    /// <summary>Whether a word is a label of that field.</summary>
    public bool AnnouncesTolerance(string word) => toleranceWords.Contains(word);

    /// <summary>Fields that a figure may belong to by its unit alone.</summary>
    public List<Field> ByUnit { get; }

    /// <summary>The units of all second figures.</summary>
    public UnitSet TailUnits { get; }

    /// <summary>The limit of a field's values on plates; null when its form says all.</summary>
    public PlateLimit? LimitOf(Field field) => limits.GetValueOrDefault(field.Name);

    /// <summary>What a field's value must be when a part of its figure was mended; null when its limit says all.</summary>
    public PlateLimit? UsualOf(Field field) => usual.GetValueOrDefault(field.Name);

    /// <summary>The words that deny the one before them.</summary>
    public IReadOnlySet<WordNode> Denials { get; }

    /// <summary>Values of a field without those that only say less than another of them.</summary>
    public IReadOnlyList<string> Finest(Field field, IReadOnlyList<string> values) =>
        values.Count < 2 ? values : [.. values.Where(value => !vague[field].Any(less => less.Value == value && less.Finer.Any(values.Contains)))];

    /// <summary>Fields whose figures are told apart by marks.</summary>
    public List<Field> Marked { get; }

    /// <summary>Whether names of steps tell a field's figures apart: LOW and HIGH beside volts are marks.</summary>
    public bool TakesSteps(Field field) => !markedBySteps.Contains(field);

    /// <summary>The spellings of a field's units.</summary>
    public UnitSet UnitsOf(Field field) => units[field];

    /// <summary>The sets of units that a text spells one of.</summary>
    public List<UnitSet> UnitsSpelt(ReadOnlySpan<char> text) => unitSets.Spelt(text);

    /// <summary>Whether some field has a set of units.</summary>
    public bool IsOfField(UnitSet set) => unitsOfFields.Contains(set);

    /// <summary>Whether some letters or figures are a word of the vocabulary, or a unit.</summary>
    public bool Knows(ReadOnlySpan<char> text) => UnitsSpelt(text).Exists(IsOfField) || Tree.Has(text);

    /// <summary>The field of a name.</summary>
    public Field FieldOf(string name) => Shape.Find(name) ?? throw new InvalidOperationException($"The vocabulary names a field “{name}” that there is not.");

    private void AddLabel(PlateLabel label)
    {
        var field = FieldOf(label.Field);
        List<PassedKind> past = [.. label.Past.Select(FieldOf).Select(between => new PassedKind(units[between], between))];
        if (label.PastUnits.Count > 0) past.Add(new(unitSets.Of(label.PastUnits), null));
        foreach (var word in label.Labels) Tree.Add(word).Labels.Add(Entry(word, label.Unit ?? (units[field].Contains(word) ? word : null)));

        if (!label.ByUnit) return;

        // Units with a figure in them (min-1) are units only where they are spelt to the letter: 1340 /min 1~ is not one.
        foreach (var unit in field.Form.UnitSpellings.Where(unit => unit.Any(Characters.SpellsWords) && !unit.Any(char.IsAsciiDigit)))
        {
            var entries = Tree.Add(unit).Labels;
            if (entries.All(entry => entry.Field != field)) entries.Add(Entry(unit, unit));
        }

        LabelEntry Entry(string word, string? unit) => new(label, field, unit, word.Count(char.IsLetter) <= LongestSymbol && units[field].Contains(word)) { Past = past };
    }

    /// <summary>VALVE, and VALVE NO.</summary>
    private void AddName(string name)
    {
        var node = Tree.Add(name);
        (node.IsFiller, node.IsName) = (true, true);
        Tree.Add($"{name} NO").IsNumbered = true;
    }

    private void AddMarks(PlateMarks marks)
    {
        var field = FieldOf(marks.Field);
        foreach (var (word, isFirst) in marks.First.Select(word => (word, true)).Concat(marks.Second.Select(word => (word, false))))
        {
            var node = Tree.Add(word);
            node.Marks.Add(new(marks, field, isFirst));
            if (node.Step is not null) markedBySteps.Add(field);
        }
    }

    private void AddWords(Vocabulary vocabulary)
    {
        foreach (var word in vocabulary.Words)
        {
            var entry = new WordEntry(FieldOf(word.Field), word.Value) { OnlyBehind = word.OnlyBehind is { } behind ? FieldOf(behind) : null, NeverBeside = word.NeverBeside is { } beside ? FieldOf(beside) : null, NeverNextTo = [.. word.NeverNextTo.Select(FieldOf)], NeverBehind = [.. word.NeverBehind.Select(value => (FieldOf(value.Name), FieldOf(value.Name).Form.ReadAny(value.Text).Value!))] };
            if (!entry.Field.Form.ReadAny(word.Value).IsRead) throw new InvalidOperationException($"“{word.Value}” is no value of {word.Field}.");
            var node = Tree.Add(word.Word);
            node.Words.Add(entry);
            node.Free.Add(entry);
        }

        var onlyAtLabel = vocabulary.OnlyAtLabel.Select(Tree.Add).ToHashSet();
        foreach (var (field, word) in Shape.Fields.SelectMany(field => field.Form.Words.Select(word => (field, word))))
        {
            var node = Tree.Add(word);
            if (word.Count(Characters.SpellsWords) == 1) onlyAtLabel.Add(node);
            if (node.Words.All(entry => entry.Field != field)) node.Words.Add(new(field, word));
        }

        // A word that two fields share says nothing without a label; those that the vocabulary lists itself mean all of what they say.
        var neverAlone = vocabulary.NeverAlone.Select(FieldOf).ToHashSet();
        foreach (var node in Shape.Fields.SelectMany(field => field.Form.Words).Select(Tree.Add).Distinct().Where(node => node.Free.Count == 0))
        {
            List<WordEntry> alone = [.. node.Words.Where(entry => !neverAlone.Contains(entry.Field))];
            if (alone.Count == 1 && !onlyAtLabel.Contains(node)) node.Free.AddRange(alone);
        }
    }

    private static bool IsOneOf(IReadOnlyList<double> all, ReadOnlySpan<char> text) => double.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var figure) && all.Contains(figure);
}

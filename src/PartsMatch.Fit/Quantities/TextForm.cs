namespace PartsMatch.Fit.Quantities;

/// <summary>A number and the symbol of its unit, for programs that compute with it.</summary>
/// <param name="Value">The number, rounded as its text is.</param>
/// <param name="Unit">The unit's symbol; null for a plain number.</param>
public readonly record struct Figure(double Value, string? Unit);

/// <summary>How values of one type are read from and written as text, as edges see it: the type closed over.</summary>
public abstract class TextForm
{
    /// <summary>The type whose values this form reads and writes.</summary>
    public abstract Type ValueType { get; }

    /// <summary>What a right text is, to end a complaint with: "a length with its unit, such as 1/2 in or 12.7 mm".</summary>
    public abstract string Expected { get; }

    /// <summary>A text that reads.</summary>
    public abstract string Example { get; }

    /// <summary>The choices, when only a few texts are right; empty otherwise.</summary>
    public virtual IReadOnlyList<string> Choices => [];

    /// <summary>Whether several of the choices may stand together, with commas between.</summary>
    public virtual bool TakesSeveral => false;

    /// <summary>Whether two texts for it do not disagree but are one with a comma between: several of a plate's words stand for one value.</summary>
    public virtual bool JoinsSeveral => false;

    /// <summary>Every word or group of words that is a value by itself, as plates print it; empty for figures.</summary>
    public virtual IReadOnlyList<string> Words => [];

    /// <summary>The spellings of the units that may stand beside its figures; empty when it has none.</summary>
    public virtual IReadOnlyList<string> UnitSpellings => [];

    /// <summary>Whether 1/4 is a quarter to it (horsepower, inches) rather than two figures.</summary>
    public virtual bool TakesFractions => false;

    /// <summary>Whether a letter may touch its figure's front (frames, S56C), so that none there is mistaken for a digit.</summary>
    public virtual bool MayBeginWithLetter => false;

    /// <summary>Reads a text; never throws, whatever the text.</summary>
    public abstract TextReading<object> ReadAny(string text);

    /// <summary>Writes a value of <see cref="ValueType"/>; in <see cref="Units.AsGiven"/> it reads back as an equal value.</summary>
    public abstract string WriteAny(object value, Units units);

    /// <summary>A value that is a single number, as one; null for a choice, words, or several numbers.</summary>
    public virtual Figure? FigureOf(object value, Units units) => null;

    /// <summary>Where each of a value's figures stands on its own scale, as <see cref="Steps"/> count; none of words, which are alike or not.</summary>
    public virtual IReadOnlyList<double> StepsOf(object value) => FigureOf(value, Units.Si) is { } figure ? Steps.Of(figure.Value) : [];
}

/// <summary>How values of <typeparamref name="T"/> are read from and written as text.</summary>
/// <typeparam name="T">The value's type.</typeparam>
public abstract class TextForm<T> : TextForm
    where T : notnull
{
    private readonly ReadTexts read = new();

    /// <inheritdoc/>
    public override Type ValueType => typeof(T);

    /// <summary>Reads a text; never throws, whatever the text. Space around it does not count.</summary>
    public abstract TextReading<T> Read(string text);

    /// <summary>Writes a value, invariantly; in <see cref="Units.AsGiven"/> it reads back as an equal value.</summary>
    public abstract string Write(T value, Units units = Units.AsGiven);

    /// <inheritdoc/>
    public override TextReading<object> ReadAny(string text)
    {
        if (read.TryGet(text, out var before)) return before;
        var reading = Read(text);
        var any = reading.IsRead ? TextReading<object>.Of(reading.Value) : TextReading<object>.Refused(reading.Wrong!);
        read.Keep(text, any);
        return any;
    }

    /// <inheritdoc/>
    public override string WriteAny(object value, Units units) => Write((T)value, units);
}

using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>A verdict that is told where it applies.</summary>
/// <typeparam name="T">What was worked out.</typeparam>
/// <param name="Severity">How severe it is.</param>
/// <param name="When">Whether it applies.</param>
/// <param name="Text">A plain sentence.</param>
internal sealed record Remark<T>(Severity Severity, Func<T, bool> When, Func<T, string> Text)
{
    /// <summary>A verdict in the same words for all values.</summary>
    public Remark(Severity severity, Func<T, bool> when, string text)
        : this(severity, when, _ => text) { }

    /// <summary>A verdict that always applies.</summary>
    public Remark(Severity severity, Func<T, string> text)
        : this(severity, _ => true, text) { }

    /// <summary>A verdict that always applies, in the same words.</summary>
    public Remark(Severity severity, string text)
        : this(severity, _ => true, _ => text) { }
}

/// <summary>A caution that is given where it applies.</summary>
/// <typeparam name="T">What was worked out.</typeparam>
/// <param name="Caution">The caution.</param>
/// <param name="When">Whether it applies.</param>
internal sealed record Reminder<T>(Caution Caution, Func<T, bool> When)
{
    /// <summary>A caution that always applies.</summary>
    public static implicit operator Reminder<T>(Caution caution) => new(caution, _ => true);
}

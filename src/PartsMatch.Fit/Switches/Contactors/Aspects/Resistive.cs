using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>Does the contactor carry the amps of all heaters on it?</summary>
public sealed class Resistive : ResistiveAspect<ContactorSpec, ContactorSite>;

using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>Is the contactor no source of ignition where something could burn?</summary>
public sealed class HazardousPlace : HazardAspect<ContactorSpec, ContactorSite>;

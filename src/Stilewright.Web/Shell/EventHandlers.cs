using Microsoft.AspNetCore.Components;
using Stilewright.Web.Drawings;
using Stilewright.Web.Fields;

namespace Stilewright.Web.Shell;

/// <summary>Events of our own, raised by the scripts; the framework finds them by the name of this class.</summary>
[EventHandler("onpicked", typeof(PickedEventArgs), enableStopPropagation: true, enablePreventDefault: true)]
[EventHandler("ontyped", typeof(FieldEventArgs), enableStopPropagation: true, enablePreventDefault: true)]
[EventHandler("onsettled", typeof(FieldEventArgs), enableStopPropagation: true, enablePreventDefault: true)]
[EventHandler("onlines", typeof(LinesEventArgs), enableStopPropagation: true, enablePreventDefault: true)]
public static class EventHandlers;
